import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { perTourDayOf } from '../../../../src-main/model/judge/tour-day-cost.ts';
import { eur, jpy, moneyGround, pricedLine as line } from '../../../support/priced-line.ts';

describe('perTourDayOf()', () => {
  it('is nothing for an empty kit', () => {
    expect(perTourDayOf([], moneyGround())).toEqual({ total: eur(0), notConverted: [] });
  });

  it('spreads the price evenly where money earns nothing: 300 EUR over 5 years of 30 days are 2 EUR a day', () => {
    expect(perTourDayOf([line({ price: eur(30_000) })], moneyGround()).total).toEqual(eur(200));
  });

  it('counts owned items too, since they wear', () => {
    const owned = line({ price: eur(30_000), owned: 1 });
    expect(perTourDayOf([owned], moneyGround()).total).toEqual(eur(200));
  });

  it('takes off what the item fetches in the end', () => {
    const sold = line({ price: eur(30_000), resale: eur(15_000) });
    expect(perTourDayOf([sold], moneyGround()).total).toEqual(eur(100));
  });

  it('gives each line its own years: 300 EUR over 5 years and 60 over 2 are 90 EUR a year', () => {
    const lines = [line({ price: eur(30_000) }), line({ price: eur(6000), lifeYears: 2 })];
    expect(perTourDayOf(lines, moneyGround()).total).toEqual(eur(300));
  });

  // By hand: A(2, 10 %) = 1/1.1 + 1/1.21 = 1.7355372; (10,000 - 1210/1.21) / 1.7355372 = 5185.71; over 10 days 518.57.
  it('charges interest on what is bound', () => {
    const lent = line({ price: eur(10_000), resale: eur(1210), lifeYears: 2 });
    expect(perTourDayOf([lent], moneyGround({ ratePct: 10, touringDaysAYear: 10 })).total).toEqual(eur(519));
  });

  it('names other currencies apart, a resale in one as money that comes back', () => {
    const lines = [
      line({ price: jpy(30_000) }),
      line({ price: eur(30_000), resale: { minor: 750, currency: 'CHF' } }),
    ];
    expect(perTourDayOf(lines, moneyGround())).toEqual({
      total: eur(200),
      notConverted: [jpy(200), { minor: -5, currency: 'CHF' }],
    });
  });

  it('is a plain 0 where price and resale are about even', () => {
    expect(perTourDayOf([line({ price: eur(1000), resale: eur(1001) })], moneyGround()).total.minor).toBe(0);
  });
});

describe('the cost of a tour-day', () => {
  const purchase = fc.record({
    minor: fc.integer({ min: 0, max: 10_000_000 }),
    years: fc.double({ min: 0.5, max: 49, noNaN: true }),
    ratePct: fc.double({ min: 0, max: 30, noNaN: true }),
    days: fc.integer({ min: 1, max: 364 }),
  });
  const costOf = (minor: number, lifeYears: number, ratePct: number, touringDaysAYear: number): number =>
    perTourDayOf([line({ price: eur(minor), lifeYears })], moneyGround({ ratePct, touringDaysAYear })).total
      .minor;

  it('never rises with longer use or more touring, and never falls with interest', () => {
    fc.assert(
      fc.property(purchase, ({ minor, years, ratePct, days }) => {
        const base = costOf(minor, years, ratePct, days);
        expect(costOf(minor, years + 1, ratePct, days)).toBeLessThanOrEqual(base);
        expect(costOf(minor, years, ratePct, days + 1)).toBeLessThanOrEqual(base);
        expect(costOf(minor, years, ratePct + 1, days)).toBeGreaterThanOrEqual(base);
      }),
      { seed: 6, numRuns: 300, endOnFailure: true },
    );
  });

  it('takes back at least the price over the whole life', () => {
    fc.assert(
      fc.property(purchase, ({ minor, years, ratePct, days }) => {
        const paid = costOf(minor, years, ratePct, days) * years * days;
        const roundingOff = 0.5 * years * days;
        expect(paid).toBeGreaterThanOrEqual(minor * (1 - 1e-9) - roundingOff);
      }),
      { seed: 7, numRuns: 300, endOnFailure: true },
    );
  });
});
