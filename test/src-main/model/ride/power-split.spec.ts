import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Way } from '../../../../src-main/model/ride/course.ts';
import { meanPowerSplit, type PowerSplit } from '../../../../src-main/model/ride/power-split.ts';
import { steadySpeedKmh } from '../../../../src-main/model/ride/solve-speed.ts';
import { expectNear } from '../../../support/near.ts';

const ride = {
  massKg: 115,
  dragAreaM2: 0.559,
  airDensityKgM3: 1.225,
  drivetrainEfficiency: 0.976,
  downhillCapKmh: 45,
};
const way = (gradePct: number): Way => ({
  grade: gradePct / 100,
  rollingCoefficient: 0.0077,
  headwindMs: 0,
  recordedKmh: null,
});
function splitAt(gradePct: number, kmh: number, dragW = 0): PowerSplit {
  return meanPowerSplit(
    [way(gradePct)],
    ride,
    Float64Array.of(kmh),
    Float64Array.of(1),
    Float64Array.of(dragW),
  );
}

const partsOf = ({ riderW: _, ...parts }: PowerSplit): number =>
  Object.values(parts).reduce((sum, watts) => sum + watts, 0);

describe('meanPowerSplit()', () => {
  it('needs no rider on a descent steep enough, only brakes', () => {
    const split = splitAt(-8, 45);
    expect([split.riderW, split.drivetrainW]).toEqual([0, 0]);
    expect(split.brakesW).toBeGreaterThan(0);
    expectNear(partsOf(split), 0, 1e-9, 'balance');
  });

  it('gives the rider’s power back at a solved speed', () => {
    expectNear(splitAt(2, steadySpeedKmh(110, way(2), ride)).riderW, 110, 1e-6, 'rider');
  });

  it('names the hub’s drag apart', () => {
    const [without, withHub] = [splitAt(0, 18), splitAt(0, 18, 5)];
    expect(withHub.hubW).toBe(5);
    expectNear(withHub.riderW - without.riderW, 5 / 0.976, 1e-9, 'rider');
  });

  it('weights each way by its time', () => {
    const ways = [way(0), way(4)];
    const speeds = Float64Array.of(20, 8);
    const split = meanPowerSplit(ways, ride, speeds, Float64Array.of(1, 3), new Float64Array(2));
    expectNear(split.slopeW, 0.75 * splitAt(4, 8).slopeW, 1e-9, 'slope');
  });

  it('balances on any road', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -25, max: 25, noNaN: true }),
        fc.double({ min: 4, max: 90, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (gradePct, kmh, dragW) => {
          const split = splitAt(gradePct, kmh, dragW);
          expectNear(partsOf(split), split.riderW, 1e-6, 'balance');
        },
      ),
    );
  });
});
