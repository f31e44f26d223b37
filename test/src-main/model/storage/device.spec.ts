import { describe, expect, it } from 'vitest';
import { activities, useByActivityW } from '../../../../src-main/model/storage/device.ts';

describe('useByActivityW()', () => {
  it('puts each activity at its place in the table', () => {
    const use = useByActivityW({ as: 'activity', ridingW: 1, stopW: 2, eveningW: 3, nightW: 4 });
    expect(Object.fromEntries(activities.map((name, index) => [name, use[index]]))).toEqual({
      riding: 1,
      stop: 2,
      evening: 3,
      night: 4,
    });
  });
  it('spreads a daily figure evenly over 24 hours', () => {
    expect(useByActivityW({ as: 'day', whPerDay: 12 })).toEqual([0.5, 0.5, 0.5, 0.5]);
  });
});
