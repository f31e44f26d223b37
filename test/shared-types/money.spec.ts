import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { currencyCode, fromMajor, minorDigits, money, toMajor } from '../../shared-types/money.ts';

describe('money', () => {
  it.each([-1, 0.5, NaN, 1e12])('refuses %d minor units', (minor) => {
    expect(money.safeParse({ minor, currency: 'EUR' }).success).toBe(false);
  });
  it.each(['eur', 'EURO', '', '€'])('refuses the currency %j', (code) => {
    expect(currencyCode.safeParse(code).success).toBe(false);
  });
});

describe('minor units', () => {
  // ISO 4217: EUR 2, JPY 0, TND 3.
  it.each([
    ['EUR', 2],
    ['JPY', 0],
    ['TND', 3],
  ])('%s has %d', (currency, digits) => expect(minorDigits(currency)).toBe(digits));

  it('come back from major units whole', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 100_000_000 }),
        fc.constantFrom('EUR', 'JPY', 'TND'),
        (minor, currency) => {
          expect(fromMajor(toMajor({ minor, currency }), currency)).toEqual({ minor, currency });
        },
      ),
    );
  });
});
