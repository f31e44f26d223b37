import { describe, expect, it } from 'vitest';
import { longestSunshineH } from '../../../src-main/workbench/longest-sunshine.ts';
import { expectNear } from '../../support/near.ts';

describe('longestSunshineH()', () => {
  it('is a whole day in the polar summer and nothing in the polar winter', () => {
    expect(longestSunshineH(80, 5)).toBe(24);
    expect(longestSunshineH(80, 11)).toBe(0);
  });

  it('is a little longer than the FAO-56 daylight, which knows no refraction', () => {
    // FAO-56 annex 2 table 2.7, 50 N: 16.1 h in June, 7.9 h in December.
    for (const [month, daylight] of [
      [5, 16.1],
      [11, 7.9],
    ] as const) {
      expectNear(longestSunshineH(50, month) - daylight, 0.2, 0.15, 'longer by, h');
    }
  });

  it('is 12 hours and a few minutes on the equator all year', () => {
    for (let month = 0; month < 12; month += 1) expectNear(longestSunshineH(0, month), 12.12, 0.02, 'h');
  });
});
