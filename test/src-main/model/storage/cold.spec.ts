import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { usableShare } from '../../../../src-main/model/storage/cold.ts';
import { expectNear } from '../../../support/near.ts';

describe('usableShare()', () => {
  it.each([-20.01, -40, -273])('is nothing at %d degC', (degC) => expect(usableShare(degC)).toBe(0));
  it('is nothing where the temperature is not known', () => expect(usableShare(NaN)).toBe(0));
  it.each([25, 25.01, 60])('is all at %d degC', (degC) => expect(usableShare(degC)).toBe(1));
  it('lies on a straight line between two measured temperatures', () => {
    // Half-way between 0.884 at 0 and 0.936 at 10 degC, a fifth of the way from 0.936 at 10 to 1 at 25.
    expectNear(usableShare(5), 0.91, 1e-12, 'share');
    expectNear(usableShare(13), 0.9488, 1e-12, 'share');
  });
  it('never falls as it grows warmer', () => {
    const anyDegC = fc.double({ min: -40, max: 60, noNaN: true });
    fc.assert(
      fc.property(anyDegC, fc.double({ min: 0, max: 20, noNaN: true }), (degC, rise) => {
        expect(usableShare(degC + rise)).toBeGreaterThanOrEqual(usableShare(degC));
      }),
    );
  });
});
