import { describe, expect, it } from 'vitest';
import { normalShareBelow } from '../../../../../src-main/model/sun/history/normal.ts';
import { expectNear } from '../../../../support/near.ts';

describe('normalShareBelow()', () => {
  // Abramowitz & Stegun (1964), table 26.1; the approximation is good to 7.5e-8.
  it.each([
    [0, 0.5],
    [0.5, 0.691462461],
    [1, 0.841344746],
    [1.96, 0.975002105],
    [2, 0.977249868],
    [3, 0.998650102],
  ])('is as tabulated at %d', (z, share) => {
    expectNear(normalShareBelow(z), share, 1e-7, 'share');
    expectNear(normalShareBelow(-z), 1 - share, 1e-7, 'share on the other side');
  });

  it('stays within 0 to 1 far out', () => {
    for (const z of [-40, -9, 9, 40]) {
      expect(normalShareBelow(z)).toBeGreaterThanOrEqual(0);
      expect(normalShareBelow(z)).toBeLessThanOrEqual(1);
    }
  });
});
