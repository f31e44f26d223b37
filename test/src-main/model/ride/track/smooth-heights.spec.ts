import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rideAlong } from '../../../../../src-main/model/ride/track/ridden-track.ts';
import { smoothHeights } from '../../../../../src-main/model/ride/track/smooth-heights.ts';
import { expectNear } from '../../../../support/near.ts';
import { northwards, storeOf, type TestPoint } from '../../../../support/track-points.ts';

function smooth(...segments: readonly TestPoint[][]): number[] {
  const points = storeOf(...segments);
  return [...smoothHeights(points, rideAlong(points))!];
}

const climb = (heightsM: readonly number[]): number =>
  heightsM.slice(1).reduce((sum, heightM, index) => sum + Math.max(0, heightM - heightsM[index]!), 0);

describe('smoothHeights()', () => {
  it('has no heights where no point has one', () => {
    const points = storeOf(northwards(20, [NaN, NaN]));
    expect(smoothHeights(points, rideAlong(points))).toBeNull();
  });

  it('leaves a steady ramp exactly what it is', () => {
    const ramp = Array.from({ length: 60 }, (_, node) => 100 + 1.4 * node);
    smooth(northwards(20, ramp)).forEach((heightM, node) =>
      expectNear(heightM, ramp[node]!, 1e-6, `height at node ${node}, m`),
    );
  });

  it('spreads a spike over 200 m and a fifth of its height', () => {
    const spike = Array.from({ length: 41 }, (_, node) => (node === 20 ? 25 : 0));
    const smoothed = smooth(northwards(20, spike));
    // Two means over five nodes make weights 1 2 3 4 5 4 3 2 1, each over 25.
    const around = [0, 1, 2, 3, 4, 5, 4, 3, 2, 1, 0];
    around.forEach((heightM, index) =>
      expectNear(smoothed[15 + index]!, heightM, 1e-6, `height ${index - 5} nodes from the spike, m`),
    );
  });

  it('does not smooth over the gap between two segments', () => {
    const smoothed = smooth(
      northwards(20, new Array<number>(30).fill(0)),
      northwards(20, new Array<number>(30).fill(900)),
    );
    expect(new Set(smoothed)).toEqual(new Set([0, 900]));
  });

  it('leaves points further apart than its window as they are', () => {
    const heightsM = smooth(northwards(400, [0, 30, 0]));
    // The corner alone is cut: 30 m less the mean fall within two windows.
    expect(Math.max(...heightsM)).toBeLessThan(30);
    expect(Math.max(...heightsM)).toBeGreaterThan(26);
    expectNear(heightsM[10]!, 15, 1e-6, 'height half way up, m');
  });

  it('never adds climb to what the points climb', () => {
    const heights = fc.array(fc.double({ min: -500, max: 9000, noNaN: true }), {
      minLength: 2,
      maxLength: 80,
    });
    fc.assert(
      fc.property(heights, fc.integer({ min: 3, max: 500 }), (rough, stepM) => {
        expect(climb(smooth(northwards(stepM, rough)))).toBeLessThanOrEqual(climb(rough) + 1e-6);
      }),
    );
  });
});
