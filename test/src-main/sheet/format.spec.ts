import { describe, expect, it } from 'vitest';
import {
  countText,
  dateText,
  decimalText,
  gramsText,
  marginText,
  moneyText,
  percentText,
  whText,
} from '../../../src-main/sheet/format.ts';

// Signs by Unicode name: U+2212 MINUS SIGN, U+202F NARROW NO-BREAK SPACE, U+00A0 NO-BREAK SPACE.
const minus = '\u2212';
const narrow = '\u202f';
const noBreak = '\u00a0';

describe('decimalText', () => {
  it('gives no sign to what rounds to zero', () => {
    expect(decimalText(-0.04, 1)).toBe('0.0');
    expect(decimalText(-0)).toBe('0');
  });

  it('writes a true minus and not a hyphen', () => {
    expect(decimalText(-12.34, 1)).toBe(`${minus}12.3`);
  });

  it('separates thousands by a comma as English does', () => {
    expect(decimalText(1031)).toBe('1,031');
    expect(decimalText(1_234_567.5, 1)).toBe('1,234,567.5');
  });

  it('keeps trailing zeros so that columns line up', () => {
    expect(whText(29)).toBe('29.0');
  });
});

describe('gramsText', () => {
  it('binds the unit to its figure', () => {
    expect(gramsText(444.4)).toBe(`444${noBreak}g`);
  });
});

describe('moneyText', () => {
  // ISO 4217 minor units: EUR 2, JPY 0, TND 3.
  it('follows the decimals of each currency', () => {
    expect(moneyText({ minor: 26_400, currency: 'EUR' })).toBe(`264${noBreak}EUR`);
    expect(moneyText({ minor: 26_400, currency: 'JPY' })).toBe(`26,400${noBreak}JPY`);
    expect(moneyText({ minor: 26_400, currency: 'TND' })).toBe(`26.400${noBreak}TND`);
  });

  it('shows nothing to pay as zero, not as blank', () => {
    expect(moneyText({ minor: 0, currency: 'GBP' })).toBe(`0${noBreak}GBP`);
  });
});

describe('percentText', () => {
  it('puts a narrow space before the per cent sign', () => {
    expect(percentText(0.125)).toBe(`13${narrow}%`);
  });
});

describe('marginText', () => {
  const margin = { value: 3, capped: true, limitedBy: null, usual: 3, usualCapped: true };

  it('always signs a margin other than zero', () => {
    expect(marginText({ ...margin, capped: false, value: 0.31 })).toBe(`+31${narrow}%`);
    expect(marginText({ ...margin, capped: false, value: -0.18 })).toBe(`${minus}18${narrow}%`);
  });

  it('leaves a margin that rounds to zero unsigned', () => {
    expect(marginText({ ...margin, capped: false, value: 0.004 })).toBe(`0${narrow}%`);
    expect(marginText({ ...margin, capped: false, value: -0.004 })).toBe(`0${narrow}%`);
  });

  it('says when a margin is only a lower bound', () => {
    expect(marginText(margin)).toBe(`more than +300${narrow}%`);
    expect(marginText({ ...margin, capped: false })).toBe(`+300${narrow}%`);
  });
});

describe('dateText', () => {
  it('keeps the calendar day whatever the time zone', () => {
    // The tests run in a zone ahead of UTC; a zone behind it would show 2 May if local time crept in.
    expect(dateText('2027-05-03')).toBe('3 May 2027');
    expect(dateText('2027-05-03T23:59:59Z')).toBe('3 May 2027');
  });
});

describe('countText', () => {
  it('takes the singular for one only', () => {
    expect(countText(0, 'history', 'histories')).toBe('0 histories');
    expect(countText(1, 'history', 'histories')).toBe('1 history');
    expect(countText(1200, 'history', 'histories')).toBe('1,200 histories');
  });
});
