import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toMajor } from '../../../shared-types/money.ts';
import { fieldText } from '../../../shared-types/quantity/format.ts';
import { parseMoney } from '../../../shared-types/quantity/parse-money.ts';

const read = (text: string, currency = 'EUR', locale = 'en-GB') => parseMoney(text, currency, locale);

describe('parseMoney()', () => {
  it.each(['', 'abc', 'USD', '12 dollars', '$ 12', '1.2345', '12 USD EUR'])(
    'makes no amount of %j',
    (text) => {
      expect(read(text)).toBeNull();
    },
  );
  it('takes no amount where there is no currency', () => expect(read('12', '')).toBeNull());

  it.each([
    ['120', 12_000, 'EUR', true],
    ['120 eur', 12_000, 'EUR', true],
    ['€ 120', 12_000, 'EUR', true],
    ['120 USD', 12_000, 'USD', false],
    ['usd120.5', 12_050, 'USD', false],
    ['1.234,50', 123_450, 'EUR', true],
    ['1,234.50', 123_450, 'EUR', true],
    ['1.234', 123_400, 'EUR', false],
    ['500 JPY', 500, 'JPY', false],
    ['1.234 TND', 1234, 'TND', false],
  ])('reads %j', (text, minor, currency, plain) => {
    expect(read(text)).toEqual({ money: { minor, currency }, plain });
  });

  it('has no more decimals than the currency', () => expect(read('1.5', 'JPY')).toBeNull());

  it('gives back what a field shows', () => {
    const currencies = fc.constantFrom('EUR', 'JPY', 'TND');
    const locales = fc.constantFrom('en-GB', 'de-DE', 'fr-FR');
    fc.assert(
      fc.property(
        currencies,
        locales,
        fc.integer({ min: 0, max: 100_000_000 }),
        (currency, locale, minor) => {
          const money = { minor, currency };
          expect(parseMoney(fieldText(toMajor(money), locale), currency, locale)?.money).toEqual(money);
        },
      ),
    );
  });
});
