import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readNumber } from '../../../shared-types/quantity/read-number.ts';

describe('readNumber()', () => {
  it.each(['', ' ', 'abc', '.', '-', '1 30', '1,23,4', '1.2,3.4'])('finds no number in %j', (text) =>
    expect(readNumber(text)).toBeNull(),
  );

  it.each([
    ['1,234.50', 1234.5],
    ['1.234,50', 1234.5],
    ['1 234,5', 1234.5],
    ['1\u202f234,5', 1234.5],
    ['1’234.5', 1234.5],
    ['12,34,567', 1_234_567],
    ['1.234.567', 1_234_567],
    ['0,5', 0.5],
    ['0,234', 0.234],
    ['1234,567', 1234.567],
    ['.5', 0.5],
    ['5,', 5],
    ['-3', -3],
    ['\u22123,5', -3.5],
    ['+7', 7],
  ])('reads %j alike whatever the locale', (text, value) => {
    for (const locale of ['en-GB', 'de-DE']) {
      expect(readNumber(text, { locale })).toEqual({ value, ambiguous: false });
    }
  });

  it('lets the locale settle what is either, and says that it did', () => {
    expect(readNumber('1,234', { locale: 'en-GB' })).toEqual({ value: 1234, ambiguous: true });
    expect(readNumber('1,234', { locale: 'de-DE' })).toEqual({ value: 1.234, ambiguous: true });
    expect(readNumber('1.234', { locale: 'en-GB' })).toEqual({ value: 1.234, ambiguous: true });
    expect(readNumber('1.234', { locale: 'de-DE' })).toEqual({ value: 1234, ambiguous: true });
  });

  it('parts thousands where no number has so many decimals', () => {
    expect(readNumber('1.234', { locale: 'en-GB', mostDecimals: 2 })?.value).toBe(1234);
  });

  it('never gives minus zero', () => expect(Object.is(readNumber('-0')?.value, 0)).toBe(true));

  it('reads back what the locale writes', () => {
    const locales = fc.constantFrom('en-GB', 'de-DE', 'fr-FR', 'de-CH', 'en-IN', 'es-ES');
    fc.assert(
      fc.property(locales, fc.integer({ min: -1e9, max: 1e9 }), (locale, thousandths) => {
        const value = thousandths / 1000;
        const text = value.toLocaleString(locale, { maximumFractionDigits: 3 });
        expect(readNumber(text, { locale })?.value).toBe(value === 0 ? 0 : value);
      }),
    );
  });
});
