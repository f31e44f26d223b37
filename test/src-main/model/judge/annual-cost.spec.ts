import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { annuityFactor, equivalentAnnualCost } from '../../../../src-main/model/judge/annual-cost.ts';
import { expectNear } from '../../../support/near.ts';

describe('annuityFactor()', () => {
  it('is the number of years without interest', () => expect(annuityFactor(0, 7.5)).toBe(7.5));

  it('nears that number as interest vanishes', () => {
    expectNear(annuityFactor(1e-12, 7.5), 7.5, 1e-9, 'years');
  });

  it('is the sum of the worth of each payment', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-4, max: 0.3, noNaN: true }),
        fc.integer({ min: 1, max: 50 }),
        (rate, years) => {
          const payments = Array.from({ length: years }, (_, year) => (1 + rate) ** -(year + 1));
          const sum = payments.reduce((all, worth) => all + worth, 0);
          expectNear(annuityFactor(rate, years), sum, sum * 1e-12, 'factor');
        },
      ),
      { seed: 8, numRuns: 200, endOnFailure: true },
    );
  });
});

describe('equivalentAnnualCost()', () => {
  it('is the loss a year without interest', () => {
    expect(equivalentAnnualCost({ price: 500, resale: 100, years: 4 }, 0)).toBe(100);
  });

  it('is the whole price and its interest where the use is a year', () => {
    expectNear(equivalentAnnualCost({ price: 100, resale: 0, years: 1 }, 0.05), 105, 1e-9, 'a year');
  });

  it('is only the interest where the thing fetches what it cost', () => {
    expectNear(equivalentAnnualCost({ price: 100, resale: 100, years: 6 }, 0.05), 5, 1e-9, 'a year');
  });

  it('is below 0 where it fetches more', () => {
    expect(equivalentAnnualCost({ price: 100, resale: 140, years: 2 }, 0)).toBe(-20);
  });
});
