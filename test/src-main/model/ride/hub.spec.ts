import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { HubPower } from '../../../../shared-types/hub-item.ts';
import { generatorWheel, type ConverterModel, type HubModel } from '../../../../src-main/model/ride/hub.ts';
import { expectNear } from '../../../support/near.ts';
import { anyConverter, anyHub } from '../../../support/random-ride.ts';

const rated: HubModel = {
  power: { as: 'rating', ratedW: 3 },
  wheelCircumferenceM: 2.155,
  ratedCircumferenceM: 2.155,
  idleDragW10: 0.5,
  idleDragW30: 2.5,
};
const converter: ConverterModel = {
  efficiency: 0.8,
  startSpeedKmh: 10,
  outputW: 10,
  load: 'rated',
  seriesCapacitorUF: 0,
};
const anyKmh = fc.oneof(fc.constant(0), fc.double({ min: 0.001, max: 120, noNaN: true }));

/** A hub known by readings of speed in km/h and power in W. */
function measured(readAt: 'hub' | 'plug', ...readings: readonly (readonly [number, number])[]): HubModel {
  const points = readings.map(([speedKmh, powerW]) => ({ speedKmh, powerW }));
  const power: HubPower = { as: 'curve', readAt, points };
  return { ...rated, power };
}

describe('generatorWheel() without a converter', () => {
  const wheel = generatorWheel(rated, null);
  it('gives nothing and never starts', () => {
    expect(wheel.startSpeedKmh).toBeNull();
    for (const kmh of [0, 10, 60]) expect(wheel.plugW(kmh)).toBe(0);
  });
  it('drags as if switched off', () => {
    for (const kmh of [0, 10, 60]) expect(wheel.onW(kmh)).toBe(wheel.offW(kmh));
  });
});

describe('drag of a hub switched off', () => {
  it('is nothing at rest', () => expect(generatorWheel(rated, null).offW(0)).toBe(0));
  it('is what was given at 10 and at 30 km/h', () => {
    fc.assert(
      fc.property(anyHub, (hub) => {
        const { offW } = generatorWheel(hub, null);
        expectNear(offW(10), hub.idleDragW10, 1e-9, 'at 10 km/h, W');
        // Values that fall with speed are no hub's: then the first one holds.
        expectNear(offW(30), Math.max(hub.idleDragW10, hub.idleDragW30), 1e-9, 'at 30 km/h, W');
      }),
    );
  });
  it('never falls with speed, whatever was given', () => {
    fc.assert(
      fc.property(anyHub, anyKmh, (hub, kmh) => {
        const { offW } = generatorWheel(hub, null);
        expect(offW(kmh)).toBeGreaterThanOrEqual(0);
        expect(offW(kmh + 1)).toBeGreaterThanOrEqual(offW(kmh));
      }),
    );
  });
});

describe('generatorWheel() with a converter', () => {
  it('gives nothing just below its start and all at it', () => {
    const wheel = generatorWheel(rated, converter);
    expect(wheel.plugW(10 - 1e-9)).toBe(0);
    expect(wheel.onW(10 - 1e-9)).toBe(wheel.offW(10 - 1e-9));
    expect(wheel.plugW(10)).toBeGreaterThan(1.5);
    expect(wheel.onW(10)).toBeGreaterThan(wheel.offW(10) + 1.5);
  });
  it('drags more from its first km/h where it starts at rest', () => {
    const wheel = generatorWheel(rated, { ...converter, startSpeedKmh: 0 });
    expect(wheel.plugW(0)).toBe(0);
    expect(wheel.onW(1)).toBeGreaterThan(wheel.offW(1));
  });
  it('draws no more than the converter can pass on', () => {
    const wheel = generatorWheel(rated, { ...converter, outputW: 1 });
    expectNear(wheel.plugW(40), 1, 1e-12, 'at the plug, W');
    // 1 W at the plug is 1.25 W from the hub, and 1.5625 W through the winding of 12 of 15 ohm.
    expectNear(wheel.onW(40) - wheel.offW(40), 1.5625, 1e-9, 'drag of charging, W');
  });
  it('gives more in a smaller wheel, which turns faster', () => {
    const folding = { ...rated, wheelCircumferenceM: 1.33 };
    expect(generatorWheel(folding, converter).plugW(15)).toBeGreaterThan(
      generatorWheel(rated, converter).plugW(15),
    );
  });
  it('gives the same in any wheel it is rated for', () => {
    const small = { ...rated, wheelCircumferenceM: 1.33, ratedCircumferenceM: 1.33 };
    const plugW = generatorWheel(rated, converter).plugW(15);
    expectNear(generatorWheel(small, converter).plugW(15), plugW, 1e-9, 'at the plug, W');
  });
  it('gives half as much from a rating of half the watts', () => {
    const half: HubModel = { ...rated, power: { as: 'rating', ratedW: 1.5 } };
    const plugW = generatorWheel(rated, converter).plugW(15);
    expectNear(generatorWheel(half, converter).plugW(15), plugW / 2, 1e-9, 'at the plug, W');
  });
});

describe('generatorWheel() with a measured curve', () => {
  const always = { ...converter, startSpeedKmh: 0 };
  const wheelOf = (hub: HubModel) => generatorWheel(hub, always);

  it('starts from nothing at rest below its first reading', () => {
    const wheel = wheelOf(measured('hub', [10, 1], [20, 3]));
    expect(wheel.plugW(0)).toBe(0);
    expect(wheel.plugW(5)).toBeGreaterThan(0);
    expect(wheel.plugW(5)).toBeLessThan(0.8);
  });
  it('takes a reading at rest as it is', () => {
    expect(wheelOf(measured('hub', [0, 0], [20, 3])).plugW(0)).toBe(0);
  });
  it('is level beyond its last reading', () => {
    const wheel = wheelOf(measured('hub', [10, 1], [20, 3]));
    expectNear(wheel.plugW(80), 2.4, 1e-12, 'at the plug, W');
  });
  it('passes on the converter’s share of readings at the hub', () => {
    expectNear(wheelOf(measured('hub', [10, 1], [20, 3])).plugW(20), 2.4, 1e-12, 'at the plug, W');
  });
  it('gives readings at the plug as read, and drags for the loss', () => {
    const wheel = wheelOf(measured('plug', [10, 1], [20, 3]));
    expectNear(wheel.plugW(20), 3, 1e-12, 'at the plug, W');
    // 3 W over 0.8 in the converter and 0.8 in the winding.
    expectNear(wheel.onW(20) - wheel.offW(20), 4.6875, 1e-9, 'drag of charging, W');
  });
  it('falls where the readings fall', () => {
    const wheel = wheelOf(measured('hub', [10, 1], [20, 4], [30, 2]));
    expectNear(wheel.plugW(30), 1.6, 1e-12, 'at 30 km/h, W');
    expect(wheel.plugW(25)).toBeLessThan(wheel.plugW(20));
    expect(wheel.onW(30) - wheel.offW(30)).toBeLessThan(wheel.onW(20) - wheel.offW(20));
  });
  it('keeps a plateau of the readings', () => {
    const wheel = wheelOf(measured('hub', [10, 2], [20, 2], [30, 3]));
    for (const kmh of [10, 13, 17, 20]) expectNear(wheel.plugW(kmh), 1.6, 1e-12, `at ${kmh} km/h, W`);
  });
  it('minds neither load nor capacitor: both were there when read', () => {
    const hub = measured('plug', [10, 1], [20, 3]);
    const tuned = generatorWheel(hub, { ...always, load: 'tracking', seriesCapacitorUF: 220 });
    for (const kmh of [5, 15, 25]) expect(tuned.plugW(kmh)).toBe(wheelOf(hub).plugW(kmh));
  });
});

/** What a curve read at the plug says the converter gives; its rated output does not take that back. */
function readAtPlug({ power }: HubModel): readonly number[] {
  return power.as === 'curve' && power.readAt === 'plug' ? power.points.map(({ powerW }) => powerW) : [];
}

describe('any generator wheel', () => {
  it('gives no more than mechanical power, winding and converter leave', () => {
    fc.assert(
      fc.property(anyHub, anyConverter, anyKmh, (hub, any, kmh) => {
        const wheel = generatorWheel(hub, any);
        const left = (wheel.onW(kmh) - wheel.offW(kmh)) * any.efficiency;
        expect(wheel.plugW(kmh)).toBeLessThanOrEqual(left * (1 + 1e-9) + 1e-12);
      }),
      { numRuns: 500 },
    );
  });
  it('loses a fifth in the winding under a rated load, and on any curve', () => {
    fc.assert(
      fc.property(anyHub, anyConverter, anyKmh, (hub, any, kmh) => {
        const plain = { ...any, load: 'rated', seriesCapacitorUF: 0 } as const;
        const wheel = generatorWheel(hub, plain);
        const chargingW = wheel.onW(kmh) - wheel.offW(kmh);
        expectNear(wheel.plugW(kmh), chargingW * 0.8 * any.efficiency, 1e-9, 'at the plug, W');
      }),
      { numRuns: 500 },
    );
  });
  it('stays within the output of its converter, or within what was read behind it', () => {
    fc.assert(
      fc.property(anyHub, anyConverter, anyKmh, (hub, any, kmh) => {
        const plugW = generatorWheel(hub, any).plugW(kmh);
        expect(plugW).toBeGreaterThanOrEqual(-1e-12);
        expect(plugW).toBeLessThanOrEqual(Math.max(any.outputW, ...readAtPlug(hub)) * (1 + 1e-12));
      }),
    );
  });
  it('drags charging at least as much as switched off', () => {
    fc.assert(
      fc.property(anyHub, anyConverter, anyKmh, (hub, any, kmh) => {
        const wheel = generatorWheel(hub, any);
        expect(wheel.offW(kmh)).toBeGreaterThanOrEqual(0);
        expect(wheel.onW(kmh)).toBeGreaterThanOrEqual(wheel.offW(kmh) - 1e-12);
      }),
    );
  });
});

describe('a curve read at the plug', () => {
  const curve = (readAt: 'hub' | 'plug'): HubModel => ({
    ...rated,
    power: {
      as: 'curve',
      readAt,
      points: [
        { speedKmh: 6, powerW: 0 },
        { speedKmh: 8, powerW: 1 },
        { speedKmh: 20, powerW: 6 },
      ],
    },
  });
  it('is taken as read: neither cut at the label’s start nor held at its output', () => {
    const wheel = generatorWheel(curve('plug'), { ...converter, startSpeedKmh: 12, outputW: 4 });
    expect(wheel.startSpeedKmh).toBe(6);
    expectNear(wheel.plugW(8), 1, 1e-12, 'at 8 km/h, W');
    expectNear(wheel.plugW(20), 6, 1e-12, 'at 20 km/h, W');
  });
  it('leaves start and output to the converter where it was read at the hub', () => {
    const wheel = generatorWheel(curve('hub'), { ...converter, startSpeedKmh: 12, outputW: 4 });
    expect([wheel.plugW(8), wheel.plugW(20)]).toEqual([0, 4]);
  });
});
