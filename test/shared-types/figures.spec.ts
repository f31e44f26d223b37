import { describe, expect, it } from 'vitest';
import {
  amount,
  formatNumber,
  grams,
  marginFigure,
  moneyText,
  percent,
  wattHours,
  withUnit,
} from '../../shared-types/figures.ts';

// Typography by our own rules (looks): true minus U+2212, narrow no-break space U+202F before %, no-break space
// U+00A0 before a unit. Separators of thousands and decimals as CLDR has them for the locale.
const minus = '\u2212';
const narrow = '\u202f';
const hard = '\u00a0';
const british = { locale: 'en-GB' };

describe('formatNumber()', () => {
  it.each([Number.NaN, Infinity, -Infinity])('writes a dash for %s', (value) => {
    expect(formatNumber(value, british)).toBe('–');
  });

  it('never writes a signed zero', () => {
    expect(formatNumber(-0.001, british)).toBe('0');
    expect(formatNumber(-0.001, { ...british, signed: true })).toBe('0');
    expect(formatNumber(0.001, { ...british, signed: true })).toBe('0');
  });

  it('writes a true minus and separates thousands', () => {
    expect(formatNumber(-1234.4, british)).toBe(`${minus}1,234`);
  });

  it('separates thousands as the locale does', () => {
    expect(formatNumber(1234.5, { locale: 'de-DE', digits: 1 })).toBe('1.234,5');
  });

  it('keeps trailing zeros only where figures line up', () => {
    expect(formatNumber(3, { ...british, digits: 1 })).toBe('3');
    expect(formatNumber(3, { ...british, digits: 1, fixed: true })).toBe('3.0');
  });
});

describe('units', () => {
  it.each([
    [9.94, `9.9${hard}Wh`],
    [10.4, `10${hard}Wh`],
    [-0.31, `${minus}0.3${hard}Wh`],
    [1234, `1,234${hard}Wh`],
  ])('writes %d Wh with as many decimals as matter', (value, text) => {
    expect(wattHours(value, 'en-GB')).toBe(text);
  });

  it('keeps a unit on the line of its number', () => {
    expect(grams(1065.4, 'en-GB')).toBe(`1,065${hard}g`);
    expect(withUnit(15, 'km/h', british)).toBe(`15${hard}km/h`);
  });
});

describe('percent()', () => {
  it.each([
    [0.31, `+31${narrow}%`],
    [-0.184, `${minus}18${narrow}%`],
    [0, `0${narrow}%`],
    [2, `+200${narrow}%`],
  ])('writes the margin %d with its sign', (share, text) => {
    expect(percent(share, { ...british, signed: true })).toBe(text);
  });

  it('writes a bare share without a sign', () => {
    expect(percent(0.5, british)).toBe(`50${narrow}%`);
  });
});

// Decimals of a currency: ISO 4217 (JPY 0, EUR 2, TND 3).
describe('money', () => {
  it.each([
    [{ minor: 8400, currency: 'EUR' }, '84'],
    [{ minor: 8450, currency: 'EUR' }, '84.50'],
    [{ minor: 8450, currency: 'JPY' }, '8,450'],
    [{ minor: 8450, currency: 'TND' }, '8.450'],
    [{ minor: 0, currency: 'EUR' }, '0'],
  ])('writes the amount of %o in major units', (value, text) => {
    expect(amount(value, 'en-GB')).toBe(text);
  });

  it('names the currency by its code', () => {
    expect(moneyText({ minor: 33_600, currency: 'EUR' }, 'en-GB')).toBe(`336${hard}EUR`);
  });
});

describe('marginFigure()', () => {
  it('does not pretend to know a margin beyond what was tried', () => {
    const margin = { value: 3, capped: true, limitedBy: null };
    expect(marginFigure(margin, 'en-GB')).toBe('more than +300\u202f%');
  });

  it('writes a shortfall with a true minus', () => {
    const margin = { value: -0.18, capped: false, limitedBy: { device: 'Phone', day: 3 } };
    expect(marginFigure(margin, 'en-GB')).toBe('\u221218\u202f%');
  });
});
