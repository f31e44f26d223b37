import { describe, expect, it } from 'vitest';
import { money } from '../../../../shared-types/money.ts';
import {
  amountAllowed,
  inCurrency,
  majorOf,
  noAmountIn,
} from '../../../../src-renderer/parts/fields/money-entry.ts';

const euros = { minor: 4550, currency: 'EUR' };

describe('money entry', () => {
  it('shows nothing where there is no amount or no currency', () => {
    expect(majorOf({ minor: Number.NaN, currency: 'EUR' })).toBe('');
    expect(majorOf({ minor: 4550, currency: 'E' })).toBe('');
  });

  it('is refused when its field was emptied', () => {
    expect(money.safeParse(noAmountIn('EUR')).success).toBe(false);
  });

  it.each(['', 'E', 'EURO', '12€'])('keeps the code %j to be refused, without failing', (typed) => {
    const value = inCurrency(euros, typed);
    expect(money.safeParse(value).success).toBe(false);
  });

  it('shows major units of the minor ones stored', () => expect(majorOf(euros)).toBe(45.5));

  // ISO 4217: JPY has no minor unit, TND three decimals.
  it('keeps the amount when only the code was wrong', () => {
    expect(inCurrency({ minor: 4500, currency: 'EUR' }, ' jpy ')).toEqual({ minor: 45, currency: 'JPY' });
    expect(inCurrency(euros, 'TND')).toEqual({ minor: 45_500, currency: 'TND' });
  });

  it('says what is allowed in the unit of the field', () => {
    expect(amountAllowed('EUR')).toBe('a number from 0 to 1,000,000 EUR');
    expect(amountAllowed('JPY')).toBe('a number from 0 to 100,000,000 JPY');
  });
});
