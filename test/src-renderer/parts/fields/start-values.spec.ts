import { describe, expect, it } from 'vitest';
import { deviceUse, itemKinds } from '../../../../shared-types/item.ts';
import { hubPower } from '../../../../shared-types/hub-item.ts';
import { port } from '../../../../shared-types/port.ts';
import { dayStop, wind } from '../../../../shared-types/tour.ts';
import { nextEntry, valueForOption } from '../../../../src-renderer/parts/fields/start-values.ts';

const capacity = itemKinds.device.shape.capacity;

describe('valueForOption()', () => {
  it.each([
    ['activity', deviceUse],
    ['day', deviceUse],
    ['rating', hubPower],
    ['curve', hubPower],
    ['calm', wind],
    ['along', wind],
    ['around', wind],
  ])('offers a value for %s that is not refused', (option, schema) => {
    expect(schema.safeParse(valueForOption(undefined, option)).success).toBe(true);
  });

  // 4.5 Ah x 3.85 V = 17.3 Wh, by the definition of the watt-hour.
  it('keeps the energy when a capacity is given the other way', () => {
    const wh = valueForOption({ as: 'mah', mAh: 4500, cellV: 3.85 }, 'wh');
    expect(wh).toEqual({ as: 'wh', wh: 17.3 });
    expect(valueForOption({ as: 'wh', wh: 37 }, 'mah')).toEqual({ as: 'mah', mAh: 10_000, cellV: 3.7 });
  });

  it('makes a capacity the contract takes in both directions', () => {
    for (const [from, option] of [
      [{ as: 'wh', wh: 20 }, 'mah'],
      [{ as: 'mah', mAh: 2000, cellV: 3.7 }, 'wh'],
    ] as const) {
      expect(capacity.safeParse(valueForOption(from, option)).success).toBe(true);
    }
  });
});

describe('nextEntry()', () => {
  it.each([
    ['outputs', port],
    ['dayStops', dayStop],
  ])('offers a first entry of %s that is not refused', (key, schema) => {
    expect(schema.safeParse(nextEntry(key, undefined)).success).toBe(true);
  });

  it('repeats the last entry, without being the same object', () => {
    const last = { standard: 'pd', powerW: 20 };
    expect(nextEntry('outputs', last)).toEqual(last);
    expect(nextEntry('outputs', last)).not.toBe(last);
  });

  it('raises the speed of a further point, as a curve demands', () => {
    const points = [{ speedKmh: 5, powerW: 1 }];
    points.push(nextEntry('points', points[0]) as (typeof points)[0]);
    expect(hubPower.safeParse({ as: 'curve', readAt: 'hub', points }).success).toBe(true);
  });
});
