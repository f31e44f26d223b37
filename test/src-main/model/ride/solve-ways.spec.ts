import { describe, expect, it } from 'vitest';
import type { Way } from '../../../../src-main/model/ride/course.ts';
import { generatorWheel } from '../../../../src-main/model/ride/hub.ts';
import { chargingShares, solveWays } from '../../../../src-main/model/ride/solve-ways.ts';
import { expectNear } from '../../../support/near.ts';

const bare = {
  massKg: 115,
  dragAreaM2: 0.559,
  airDensityKgM3: 1.2,
  drivetrainEfficiency: 0.976,
  downhillCapKmh: 45,
};
const rider = { riderW: 100, bare };
const flat: Way = { grade: 0, rollingCoefficient: 0.0077, headwindMs: 0, recordedKmh: null };
const recorded: Way = { ...flat, recordedKmh: 24 };
const heavier = { ...bare, massKg: 130 };

const wheelFrom = (startSpeedKmh: number | null) =>
  generatorWheel(
    {
      power: { as: 'rating', ratedW: 3 },
      wheelCircumferenceM: 2.155,
      ratedCircumferenceM: 2.155,
      idleDragW10: 0.5,
      idleDragW30: 2.5,
    },
    startSpeedKmh === null
      ? null
      : { efficiency: 0.8, startSpeedKmh, outputW: 5, load: 'rated', seriesCapacitorUF: 0 },
  );

describe('solveWays()', () => {
  it('takes a recorded speed as it is where nothing is added', () => {
    expect(solveWays([recorded, flat], rider, bare)[0]).toBe(24);
  });

  it('slows a recorded and a solved way with mass and drag', () => {
    const light = solveWays([recorded, flat], rider, bare);
    const loaded = solveWays([recorded, flat], rider, heavier);
    const dragged = solveWays([recorded, flat], rider, heavier, () => 5);
    for (const way of [0, 1]) {
      expect(loaded[way]).toBeLessThan(light[way]!);
      expect(dragged[way]).toBeLessThan(loaded[way]!);
    }
  });
});

describe('chargingShares()', () => {
  const sharesAt = (startSpeedKmh: number | null): number => {
    const wheel = wheelFrom(startSpeedKmh);
    const speeds = solveWays([flat], rider, bare, wheel.onW);
    return chargingShares([flat], rider, bare, wheel, speeds)[0]!;
  };

  it('is nothing without a converter, or far below its start', () => {
    expect(sharesAt(null)).toBe(0);
    expect(sharesAt(30)).toBe(0);
  });

  it('is all of the time well above its start', () => expect(sharesAt(10)).toBe(1));

  it('falls from all to nothing as the start comes up to the rider’s speed', () => {
    // 100 W: 19.1 km/h with the hub off, some 0.4 less charging.
    const shares = [18.3, 18.6, 18.8, 19, 19.3].map(sharesAt);
    expect(shares).toEqual(shares.toSorted((a, b) => b - a));
    expectNear(shares[0]!, 1, 1e-12, 'below');
    expectNear(shares.at(-1)!, 0, 1e-12, 'above');
    expect(shares.filter((share) => share > 0 && share < 1).length).toBeGreaterThan(0);
  });
});
