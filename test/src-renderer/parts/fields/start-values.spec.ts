import { describe, expect, it } from 'vitest';
import { deviceUse, itemKinds } from '../../../../shared-types/item.ts';
import { hubPower } from '../../../../shared-types/hub-item.ts';
import { port } from '../../../../shared-types/port.ts';
import { dayStop, wind } from '../../../../shared-types/tour.ts';
import { isWhole, nextEntry, valueForOption } from '../../../../src-renderer/parts/fields/start-values.ts';

const capacity = itemKinds.device.shape.capacity;

describe('valueForOption()', () => {
  it.each([
    ['activity', deviceUse],
    ['day', deviceUse],
    ['rating', hubPower],
    ['calm', wind],
    ['along', wind],
    ['around', wind],
  ])('offers a value for %s that is not refused', (option, schema) => {
    expect(schema.safeParse(valueForOption(undefined, option)).success).toBe(true);
  });

  it('makes no readings up: a curve starts empty, and is refused until two points are in', () => {
    const curve = valueForOption({ as: 'rating', ratedW: 3 }, 'curve');
    expect(curve).toEqual({ as: 'curve', readAt: 'hub', points: [] });
    const reasons = hubPower.safeParse(curve).error?.issues.map(({ message }) => message);
    expect(reasons).toEqual(['at least two points, speed rising']);
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

  it.each([undefined, { speedKmh: 5, powerW: 1 }])('leaves a reading to be typed after %j', (last) => {
    expect(nextEntry('points', last)).toEqual({ speedKmh: Number.NaN, powerW: Number.NaN });
  });
});

describe('isWhole()', () => {
  it('holds back an entry with a figure still to be typed', () => {
    expect(isWhole({ speedKmh: Number.NaN, powerW: 3 })).toBe(false);
    expect(isWhole({ label: 'Stop', minutes: 45 })).toBe(true);
  });
});
