import { describe, expect, it } from 'vitest';
import { wallEvery, wallNightsBefore } from '../../../../src-main/model/flow/wall-nights.ts';

describe('wallEvery()', () => {
  it('ends every so many days with a wall', () => {
    expect(wallEvery(3, 7)).toEqual(['none', 'none', 'wall', 'none', 'none', 'wall', 'none']);
    expect(wallEvery(1, 2)).toEqual(['wall', 'wall']);
    expect(wallEvery(9, 3)).toEqual(['none', 'none', 'none']);
  });
});

describe('wallNightsBefore()', () => {
  it('counts those before the last day, which alone charge for the tour', () => {
    for (const days of [1, 2, 7, 24])
      for (const gap of [1, 2, 3, 7, 24, 30]) {
        const nights = wallEvery(gap, days).slice(0, days - 1);
        expect(wallNightsBefore(days, gap)).toBe(nights.filter((night) => night === 'wall').length);
      }
  });
});
