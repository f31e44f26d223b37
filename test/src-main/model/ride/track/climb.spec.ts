import fc from 'fast-check';
import { describe, it } from 'vitest';
import { climbOf } from '../../../../../src-main/model/ride/track/climb.ts';
import { expectNear } from '../../../../support/near.ts';

describe('climbOf()', () => {
  it('adds rises and falls up apart', () => {
    const { ascentM, descentM } = climbOf(Float64Array.of(0, 10, 2, 2, 20.5, 0));
    expectNear(ascentM, 28.5, 1e-9, 'ascent, m');
    expectNear(descentM, 28.5, 1e-9, 'descent, m');
  });

  it('ends where it began, less what it lost', () => {
    const heights = fc.array(fc.double({ min: 0, max: 60, noNaN: true }), { minLength: 2, maxLength: 100 });
    fc.assert(
      fc.property(heights, (heightsM) => {
        const { ascentM, descentM } = climbOf(Float64Array.from(heightsM));
        expectNear(ascentM - descentM, heightsM.at(-1)! - heightsM[0]!, 1e-9, 'ascent less descent, m');
      }),
    );
  });
});
