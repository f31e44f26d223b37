import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { smoothHeights } from '../../../../../src-main/model/ride/track/smooth-heights.ts';
import { expectNear } from '../../../../support/near.ts';

/** Heights smoothed at nodes so far apart, m. */
const smooth = (stepM: number, heightsM: readonly number[]): number[] => [
  ...smoothHeights(Float64Array.from(heightsM), stepM / 1000),
];

const climb = (heightsM: readonly number[]): number =>
  heightsM.slice(1).reduce((sum, heightM, index) => sum + Math.max(0, heightM - heightsM[index]!), 0);

describe('smoothHeights()', () => {
  it('leaves a steady ramp exactly what it is', () => {
    const ramp = Array.from({ length: 60 }, (_, node) => 100 + 1.4 * node);
    smooth(20, ramp).forEach((heightM, node) =>
      expectNear(heightM, ramp[node]!, 1e-6, `height at node ${node}, m`),
    );
  });

  it('spreads a spike over 200 m and a fifth of its height', () => {
    const spike = Array.from({ length: 41 }, (_, node) => (node === 20 ? 25 : 0));
    const smoothed = smooth(20, spike);
    // Two means over five nodes make weights 1 2 3 4 5 4 3 2 1, each over 25.
    const around = [0, 1, 2, 3, 4, 5, 4, 3, 2, 1, 0];
    around.forEach((heightM, index) =>
      expectNear(smoothed[15 + index]!, heightM, 1e-6, `height ${index - 5} nodes from the spike, m`),
    );
  });

  it('leaves nodes further apart than its window as they are', () => {
    expect(smooth(400, [0, 30, 0])).toEqual([0, 30, 0]);
  });

  it('never adds climb to what the points climb', () => {
    const heights = fc.array(fc.double({ min: -500, max: 9000, noNaN: true }), {
      minLength: 2,
      maxLength: 80,
    });
    fc.assert(
      fc.property(heights, fc.integer({ min: 3, max: 500 }), (rough, stepM) => {
        expect(climb(smooth(stepM, rough))).toBeLessThanOrEqual(climb(rough) + 1e-6);
      }),
    );
  });
});
