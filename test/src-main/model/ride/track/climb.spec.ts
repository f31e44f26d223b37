import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { climbOf, deadBandM, type Climb } from '../../../../../src-main/model/ride/track/climb.ts';
import { rideAlong } from '../../../../../src-main/model/ride/track/ridden-track.ts';
import { expectNear } from '../../../../support/near.ts';
import { northwards, storeOf } from '../../../../support/track-points.ts';

/** Climb of segments whose nodes, 20 m apart, lie at these heights. */
function climbAt(...segments: readonly (readonly number[])[]): Climb {
  const track = rideAlong(storeOf(...segments.map((heightsM) => northwards(20, heightsM))));
  return climbOf(track, Float64Array.from(segments.flat()));
}

describe('climbOf()', () => {
  it('counts nothing within the dead band', () => {
    expect(climbAt([0, deadBandM, 0, deadBandM, 0])).toEqual({ ascentM: 0, descentM: 0 });
    expect(climbAt([0, -2, 1, -2, 1])).toEqual({ ascentM: 0, descentM: 0 });
  });

  it('counts the whole of a slope however small its steps', () => {
    const ramp = Array.from({ length: 201 }, (_, node) => node / 2);
    expect(climbAt(ramp)).toEqual({ ascentM: 100, descentM: 0 });
    expect(climbAt(ramp.toReversed())).toEqual({ ascentM: 0, descentM: 100 });
  });

  it('counts from turn to turn', () => {
    expect(climbAt([0, 10, 2, 20, 19, 21, 0])).toEqual({ ascentM: 29, descentM: 29 });
  });

  it('passes over a dip on a long climb', () => {
    expect(climbAt([0, 50, 48, 100])).toEqual({ ascentM: 100, descentM: 0 });
  });

  it('counts no step in height between two segments', () => {
    expect(climbAt([0, 10], [500, 510])).toEqual({ ascentM: 20, descentM: 0 });
  });

  it('swaps ascent and descent when ridden back', () => {
    const heights = fc.array(fc.integer({ min: -200, max: 200 }), { minLength: 2, maxLength: 100 });
    fc.assert(
      fc.property(heights, (quarters) => {
        const heightsM = quarters.map((quarter) => quarter / 4);
        const there = climbAt(heightsM);
        const back = climbAt(heightsM.toReversed());
        expectNear(back.ascentM, there.descentM, 1e-9, 'ascent on the way back, m');
        expectNear(back.descentM, there.ascentM, 1e-9, 'descent on the way back, m');
      }),
    );
  });

  it('ends where it began, but for the dead band', () => {
    const heights = fc.array(fc.double({ min: 0, max: 60, noNaN: true }), { minLength: 2, maxLength: 100 });
    fc.assert(
      fc.property(heights, (heightsM) => {
        const { ascentM, descentM } = climbAt(heightsM);
        const netM = heightsM.at(-1)! - heightsM[0]!;
        // At either end up to one dead band goes uncounted.
        expectNear(ascentM - descentM, netM, 2 * deadBandM + 1e-9, 'ascent less descent, m');
      }),
    );
  });
});
