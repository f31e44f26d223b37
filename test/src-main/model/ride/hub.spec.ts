import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  hubElectricalW,
  loadedDragW,
  plugPowerW,
  type HubModel,
} from '../../../../src-main/model/ride/hub.ts';
import { expectNear } from '../../../support/near.ts';

const rated: HubModel = {
  power: { as: 'rating', ratedW: 3 },
  wheelCircumferenceM: 2.155,
  idleDragW10: 0.5,
  idleDragW30: 2.5,
};
const measured: HubModel = {
  ...rated,
  power: {
    as: 'curve',
    points: [
      { speedKmh: 10, powerW: 1 },
      { speedKmh: 20, powerW: 3 },
      { speedKmh: 30, powerW: 4 },
    ],
  },
};
const converter = { efficiency: 0.8, startSpeedKmh: 12, outputW: 2 };

describe('hubElectricalW()', () => {
  it('is nothing at rest', () => {
    expect(hubElectricalW(0, rated)).toBe(0);
    expect(hubElectricalW(0, measured)).toBe(0);
  });

  it('follows the rider’s points, straight between, level beyond', () => {
    expectNear(hubElectricalW(5, measured), 0.5, 1e-9, 'W');
    expectNear(hubElectricalW(15, measured), 2, 1e-9, 'W');
    expectNear(hubElectricalW(50, measured), 4, 1e-9, 'W');
  });

  it('reaches its rating within 10 % at 15 km/h', () => {
    // Ratings of hub generators are given at 15 km/h (JIS C 9502: within 5 % of rated voltage, so 10 % of power).
    for (const ratedW of [1.5, 2.4, 3]) {
      expectNear(
        hubElectricalW(15, { ...rated, power: { as: 'rating', ratedW } }),
        ratedW,
        0.1 * ratedW,
        'W',
      );
    }
  });

  it('never falls with speed', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 60, noNaN: true }), (kmh) => {
        expect(hubElectricalW(kmh + 1, rated)).toBeGreaterThanOrEqual(hubElectricalW(kmh, rated));
      }),
    );
  });

  it('never exceeds the mechanical power it takes', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 80, noNaN: true }), (kmh) => {
        for (const hub of [rated, measured]) {
          expect(hubElectricalW(kmh, hub)).toBeLessThanOrEqual(loadedDragW(kmh, hub));
        }
      }),
    );
  });
});

describe('plugPowerW()', () => {
  it('is nothing below the start speed of the converter', () => {
    expect(plugPowerW(11.9, measured, converter)).toBe(0);
  });
  it('is the converter’s share, up to its limit', () => {
    expectNear(plugPowerW(15, measured, converter), 1.6, 1e-9, 'W');
    expectNear(plugPowerW(30, measured, converter), 2, 1e-9, 'W');
  });
});
