import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { powerParts, riderPowerW, type RideModel } from '../../../../src-main/model/ride/power-balance.ts';
import { downhillCapKmh, steadySpeedKmh, walkingKmh } from '../../../../src-main/model/ride/solve-speed.ts';
import { expectNear } from '../../../support/near.ts';

const anyRide: fc.Arbitrary<RideModel> = fc.record({
  massKg: fc.double({ min: 60, max: 200, noNaN: true }),
  dragAreaM2: fc.double({ min: 0.3, max: 0.8, noNaN: true }),
  rollingCoefficient: fc.double({ min: 0.003, max: 0.02, noNaN: true }),
  airDensityKgM3: fc.double({ min: 0.7, max: 1.4, noNaN: true }),
  drivetrainEfficiency: fc.double({ min: 0.9, max: 1, noNaN: true }),
});
const anyWatts = fc.double({ min: 30, max: 400, noNaN: true });
const anyGrade = fc.double({ min: -0.25, max: 0.25, noNaN: true });

describe('steadySpeedKmh()', () => {
  it('spends exactly the rider’s power at every solved speed', () => {
    fc.assert(
      fc.property(anyRide, anyWatts, anyGrade, (ride, watts, grade) => {
        const kmh = steadySpeedKmh(watts, grade, ride);
        const needed = riderPowerW(kmh / 3.6, grade, ride);
        if (kmh === walkingKmh) expect(needed).toBeGreaterThanOrEqual(watts);
        else if (kmh === downhillCapKmh) expect(needed).toBeLessThanOrEqual(watts);
        else expectNear(needed, watts, 1e-6, 'power, W');
      }),
    );
  });

  it('is never slower with more power', () => {
    fc.assert(
      fc.property(anyRide, anyWatts, anyGrade, (ride, watts, grade) => {
        expect(steadySpeedKmh(watts + 20, grade, ride)).toBeGreaterThanOrEqual(
          steadySpeedKmh(watts, grade, ride),
        );
      }),
    );
  });

  it('is never faster uphill with more mass, nor with a dragging hub', () => {
    fc.assert(
      fc.property(anyRide, anyWatts, fc.double({ min: 0, max: 0.25, noNaN: true }), (ride, watts, grade) => {
        const alone = steadySpeedKmh(watts, grade, ride);
        expect(steadySpeedKmh(watts, grade, { ...ride, massKg: ride.massKg + 10 })).toBeLessThanOrEqual(
          alone,
        );
        expect(steadySpeedKmh(watts, grade, ride, () => 5)).toBeLessThanOrEqual(alone);
      }),
    );
  });
});

describe('powerParts()', () => {
  it('is nothing at rest', () => {
    const ride = {
      massKg: 100,
      dragAreaM2: 0.5,
      rollingCoefficient: 0.008,
      airDensityKgM3: 1.2,
      drivetrainEfficiency: 1,
    };
    expect(powerParts(0, 0.05, ride)).toEqual({ airW: 0, rollingW: 0, bearingsW: 0, slopeW: 0 });
  });
});
