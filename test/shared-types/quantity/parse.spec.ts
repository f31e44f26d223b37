import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fieldText, shownValue } from '../../../shared-types/quantity/format.ts';
import { parseQuantity } from '../../../shared-types/quantity/parse.ts';

const own = (unit: string) => ({ stored: unit, shown: unit });
const valueOf = (text: string, unit: string, locale = 'en-GB') =>
  parseQuantity(text, own(unit), { locale })?.value;

describe('parseQuantity()', () => {
  it.each(['abc', '', 'g', '3 apples', '20 km', '1 oz 3 lb', '1 lb -3 oz', '12 g 3', '1 lb lb'])(
    'does not make a mass of %j',
    (text) => expect(parseQuantity(text, own('g'))).toBeNull(),
  );
  it('adds no temperatures', () => expect(parseQuantity('10 °C 5 °F', own('°C'))).toBeNull());
  it('takes no unit for what has no relatives', () => {
    expect(parseQuantity('50 g', own('W/m²'))).toBeNull();
    expect(parseQuantity('50 W/m²', own('W/m²'))).toEqual({ value: 50, plain: true });
  });

  // From the pound of 453.59237 g, the foot of 0.3048 m and the mile of 1609.344 m (NIST SP 811), to the decimals kept.
  it.each([
    ['540', 'g', 540],
    ['540 g', 'g', 540],
    ['0.54 kg', 'g', 540],
    ['0,54kg', 'g', 540],
    ['1 lb 3 oz', 'g', 538.64],
    ['1lb3oz', 'g', 538.64],
    ['19 oz.', 'g', 538.64],
    ['12 mi', 'km', 19.312],
    ['20 km', 'km', 20],
    ['12 mph', 'km/h', 19.312],
    ['-5 mph', 'km/h', -8.047],
    ['3000 ft', 'm', 914.4],
    ['5\' 10"', 'm', 1.778],
    ['50 °F', '°C', 10],
    ['-4 F', '°C', -20],
    ['0.018 kW', 'W', 18],
    ['18 w', 'W', 18],
    ['20 Ah', 'mAh', 20_000],
    ['0.074 kWh', 'Wh', 74],
    ['1 h 30 min', 'min', 90],
    ['1h30m', 'min', 90],
    ['1:30', 'h', 1.5],
    ['90 min', 'h', 1.5],
    ['170 lb', 'kg', 77.1107],
    ['57 %', '%', 57],
  ])('reads %j in a field of %s as %d', (text, unit, value) => {
    expect(valueOf(text, unit)).toBeCloseTo(value, 9);
  });

  it('takes a bare number in the unit shown', () => {
    const ounces = { stored: 'g', shown: 'oz' };
    expect(parseQuantity('19', ounces)).toEqual({ value: 538.64, plain: true });
    expect(parseQuantity('540 g', ounces)).toEqual({ value: 540, plain: false });
  });

  it('says when there is something to explain', () => {
    expect(parseQuantity('540 g', own('g'))?.plain).toBe(true);
    expect(parseQuantity('1 lb', own('g'))?.plain).toBe(false);
    expect(parseQuantity('1,234', own('g'), { locale: 'en-GB' })).toEqual({ value: 1234, plain: false });
    expect(parseQuantity('1,234', own('g'), { locale: 'de-DE' })).toEqual({ value: 1.234, plain: false });
  });

  const locales = fc.constantFrom('en-GB', 'de-DE', 'fr-FR', 'de-CH', 'en-IN');

  it('gives back exactly what a field in the stored unit shows', () => {
    fc.assert(
      fc.property(locales, fc.integer({ min: -1e9, max: 1e9 }), (locale, ten) => {
        const value = ten / 1e4 || 0;
        expect(parseQuantity(fieldText(value, locale), own('g'), { locale })?.value).toBe(value);
      }),
    );
  });

  it.each([
    ['g', 'oz', 2],
    ['kg', 'lb', 2],
    ['km', 'mi', 2],
    ['km/h', 'mph', 2],
    ['m', 'ft', 1],
    ['°C', '°F', 1],
  ])('keeps in %s a figure typed in %s so that it is shown again as typed', (stored, shown, decimals) => {
    const unit = { stored, shown };
    fc.assert(
      fc.property(locales, fc.integer({ min: -1e6, max: 1e6 }), (locale, steps) => {
        const typed = fieldText(steps / 10 ** decimals || 0, locale);
        const value = parseQuantity(typed, unit, { locale })?.value ?? Number.NaN;
        expect(fieldText(shownValue(value, unit), locale)).toBe(typed);
      }),
    );
  });
});

describe('fieldText()', () => {
  it('is empty for what is no number', () => expect(fieldText(Number.NaN)).toBe(''));
  it('parts no thousands and has the decimal sign of the locale', () => {
    expect(fieldText(12_345.5, 'en-GB')).toBe('12345.5');
    expect(fieldText(-12_345.5, 'de-DE')).toBe('-12345,5');
  });
});
