import { describe, expect, it } from 'vitest';
import {
  clearnessFromSunshine,
  monthlyClearness,
  monthlyDiffuseShare,
} from '../../../../src-main/model/sun/daily-radiation.ts';
import { expectNear } from '../../../support/near.ts';

describe('clearnessFromSunshine()', () => {
  it.each([
    { what: 'no sunshine', sunshine: 0, length: 12, clearness: 0.25 },
    { what: 'sunshine all day', sunshine: 12, length: 12, clearness: 0.75 },
    { what: 'more sunshine than day', sunshine: 13, length: 12, clearness: 0.75 },
    { what: 'polar night', sunshine: 0, length: 0, clearness: 0.25 },
  ])('is $clearness for $what', ({ sunshine, length, clearness }) => {
    // Angstrom-Prescott with the coefficients of FAO-56 eq. 35.
    expectNear(clearnessFromSunshine(sunshine, length), clearness, 1e-12, 'clearness');
  });
});

describe('monthlyClearness()', () => {
  it('gives twelve finite values at every latitude, polar night included', () => {
    for (const lat of [-90, -70, 0, 70, 90]) {
      const months = monthlyClearness(new Array<number>(12).fill(4), lat);
      expect(months).toHaveLength(12);
      months.forEach((clearness) => {
        expect(clearness).toBeGreaterThanOrEqual(0.25);
        expect(clearness).toBeLessThanOrEqual(0.75);
      });
    }
  });
});

describe('monthlyDiffuseShare()', () => {
  it('holds at the edges of its validity instead of running away', () => {
    expect(monthlyDiffuseShare(0.1, 1.5)).toBe(monthlyDiffuseShare(0.3, 1.5));
    expect(monthlyDiffuseShare(0.95, 1.5)).toBe(monthlyDiffuseShare(0.8, 1.5));
  });
});
