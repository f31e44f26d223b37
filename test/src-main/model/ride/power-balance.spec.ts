import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  powerParts,
  riderPowerW,
  type RideModel,
  type Road,
} from '../../../../src-main/model/ride/power-balance.ts';
import { expectNear } from '../../../support/near.ts';
import { anyRide, anyRoad } from '../../../support/random-ride.ts';

const ride: RideModel = {
  massKg: 100,
  dragAreaM2: 0.5,
  airDensityKgM3: 1.2,
  drivetrainEfficiency: 1,
  downhillCapKmh: 45,
};
const calmFlat: Road = { grade: 0, rollingCoefficient: 0.008, headwindMs: 0 };
const anySpeedMs = fc.double({ min: 0, max: 35, noNaN: true });

describe('powerParts()', () => {
  it('is nothing at rest, even in a gale on a wall', () => {
    const parts = powerParts(0, { ...calmFlat, grade: 0.25, headwindMs: 16 }, ride);
    expect(parts).toEqual({ airW: 0, rollingW: 0, bearingsW: 0, slopeW: 0 });
  });
  it('is pushed by a wind that overtakes the rider', () => {
    // 5 m/s with 15 m/s from behind: 10 m/s of air on the back, 0.5 x 1.2 x 0.5 x 100 N x 5 m/s.
    expectNear(powerParts(5, { ...calmFlat, headwindMs: -15 }, ride).airW, -150, 1e-9, 'air, W');
  });
  it('has no air to part at the speed of the wind', () => {
    expect(powerParts(5, { ...calmFlat, headwindMs: -5 }, ride).airW).toBe(0);
  });
  it('takes nine times the air power against a wind of twice the speed', () => {
    const calm = powerParts(5, calmFlat, ride).airW;
    expectNear(powerParts(5, { ...calmFlat, headwindMs: 10 }, ride).airW, 9 * calm, 1e-9, 'air, W');
  });
  it('lifts the mass by the sine of the slope', () => {
    // 3-4-5 triangle: grade 0.75, sine 0.6, cosine 0.8. 100 kg x 9.81 m/s2 x 2 m/s.
    const parts = powerParts(2, { ...calmFlat, grade: 0.75 }, ride);
    expectNear(parts.slopeW, 1962 * 0.6, 1e-9, 'slope, W');
    expectNear(parts.rollingW, 1962 * 0.8 * 0.008, 1e-9, 'rolling, W');
  });
  it('gives back downhill what it takes uphill', () => {
    fc.assert(
      fc.property(anyRide, anyRoad, anySpeedMs, (anyone, road, speedMs) => {
        const up = powerParts(speedMs, road, anyone);
        const down = powerParts(speedMs, { ...road, grade: -road.grade }, anyone);
        expectNear(down.slopeW, -up.slopeW, 1e-9 * Math.abs(up.slopeW), 'slope, W');
        expectNear(down.rollingW, up.rollingW, 1e-9 * up.rollingW, 'rolling, W');
      }),
    );
  });
  it('never gains from tyres or bearings', () => {
    fc.assert(
      fc.property(anyRide, anyRoad, anySpeedMs, (anyone, road, speedMs) => {
        const { rollingW, bearingsW } = powerParts(speedMs, road, anyone);
        expect(rollingW).toBeGreaterThanOrEqual(0);
        expect(bearingsW).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});

describe('riderPowerW()', () => {
  it('is below 0 where the bicycle would run away', () => {
    expect(riderPowerW(3, { ...calmFlat, grade: -0.25 }, ride)).toBeLessThan(0);
  });
  it('is the sum of the parts and the drag over the drivetrain', () => {
    const anyDragW = fc.double({ min: 0, max: 30, noNaN: true });
    fc.assert(
      fc.property(anyRide, anyRoad, anySpeedMs, anyDragW, (anyone, road, speedMs, dragW) => {
        const { airW, rollingW, bearingsW, slopeW } = powerParts(speedMs, road, anyone);
        const sum = (airW + rollingW + bearingsW + slopeW + dragW) / anyone.drivetrainEfficiency;
        // Parts of some kW that cancel: 1e-9 of their sizes.
        const size = Math.abs(airW) + rollingW + bearingsW + Math.abs(slopeW) + dragW;
        expectNear(riderPowerW(speedMs, road, anyone, dragW), sum, 1e-9 + 2e-9 * size, 'at the pedals, W');
      }),
    );
  });
  it('asks the chain’s loss of the rider on top', () => {
    const clean = riderPowerW(5, calmFlat, ride);
    expectNear(riderPowerW(5, calmFlat, { ...ride, drivetrainEfficiency: 0.8 }), clean / 0.8, 1e-9, 'W');
  });
  it('grows with speed wherever there is power to give', () => {
    fc.assert(
      fc.property(anyRide, anyRoad, anySpeedMs, (anyone, road, speedMs) => {
        const needed = riderPowerW(speedMs, road, anyone);
        if (needed > 0) expect(riderPowerW(speedMs + 0.1, road, anyone)).toBeGreaterThan(needed);
      }),
    );
  });
});
