import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { climbOf } from '../../../../../src-main/model/ride/track/climb.ts';
import { deadBandM, dropWavering } from '../../../../../src-main/model/ride/track/drop-wavering.ts';
import { expectNear } from '../../../../support/near.ts';

const steady = (...heightsM: readonly number[]): number[] => [...dropWavering(Float64Array.from(heightsM))];

const quarters = fc
  .array(fc.integer({ min: -200, max: 200 }), { minLength: 2, maxLength: 100 })
  .map((heights) => heights.map((height) => height / 4));

describe('dropWavering()', () => {
  it('leaves nothing of what stays within the dead band', () => {
    expect(steady(0, deadBandM, 0, deadBandM, 0)).toEqual([0, 0, 0, 0, 0]);
    expect(climbOf(dropWavering(Float64Array.of(0, -2, 1, -2, 0)))).toEqual({ ascentM: 0, descentM: 0 });
  });

  it('keeps a slope without a dip as it is, however small its steps', () => {
    const ramp = Array.from({ length: 201 }, (_, node) => node / 2);
    expect(steady(...ramp)).toEqual(ramp);
    expect(steady(...ramp.toReversed())).toEqual(ramp.toReversed());
    expect(steady(5, 5.25, 5.5)).toEqual([5, 5.25, 5.5]);
  });

  it('keeps every turn for more than the dead band', () => {
    const up = [0, 10, 2, 20];
    expect(steady(...up)).toEqual(up);
    expect(steady(20, 4, 8, 0)).toEqual([20, 4, 8, 0]);
  });

  it('evens a dip on a long climb out, half way between both its rims', () => {
    expect(steady(0, 50, 48, 100)).toEqual([0, 49, 49, 100]);
    expect(steady(100, 48, 50, 0)).toEqual([100, 49, 49, 0]);
  });

  it('evens out what wavers before the first and after the last turn', () => {
    expect(steady(1, 2, 0, 30, 28, 29)).toEqual([1, 1, 0, 30, 29, 29]);
  });

  it('moves no height by more than half the dead band between turns, and start and end not at all', () => {
    fc.assert(
      fc.property(quarters, (heightsM) => {
        const got = steady(...heightsM);
        expect([got[0], got.at(-1)]).toEqual([heightsM[0], heightsM.at(-1)]);
        // Before the first and after the last turn a height may leave both its ends by the whole band.
        got.forEach((heightM, node) => expectNear(heightM, heightsM[node]!, deadBandM, `height ${node}, m`));
      }),
    );
  });

  it('never adds climb, and has nothing more to drop', () => {
    fc.assert(
      fc.property(quarters, (heightsM) => {
        const got = dropWavering(Float64Array.from(heightsM));
        expect(climbOf(got).ascentM).toBeLessThanOrEqual(climbOf(Float64Array.from(heightsM)).ascentM + 1e-9);
        expect([...dropWavering(got)]).toEqual([...got]);
      }),
    );
  });

  it('is the same ridden back', () => {
    fc.assert(
      fc.property(quarters, (heightsM) => {
        const there = climbOf(dropWavering(Float64Array.from(heightsM)));
        const back = climbOf(dropWavering(Float64Array.from(heightsM.toReversed())));
        expectNear(back.ascentM, there.descentM, 1e-9, 'ascent on the way back, m');
      }),
    );
  });
});
