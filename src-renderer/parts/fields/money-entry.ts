import { rangeText } from '../../../shared-types/field.ts';
import {
  currencyCode,
  fromMajor,
  minorDigits,
  money,
  toMajor,
  type Money,
} from '../../../shared-types/money.ts';

/** The platform has decimals for every well-formed code and throws on any other. */
export function isCode(currency: string): boolean {
  return currencyCode.safeParse(currency).success;
}

/** The amount in major units as its field shows it; nothing when there is none. */
export function majorOf(value: Money): number | '' {
  return Number.isFinite(value.minor) && isCode(value.currency) ? toMajor(value) : '';
}

/** What a field starts from that holds no amount yet. */
export function noAmountIn(currency: string): Money {
  return { minor: Number.NaN, currency };
}

/** The same amount in another currency: nothing is converted, only the code was wrong. */
export function inCurrency(value: Money, typed: string): Money {
  const currency = typed.trim().toUpperCase();
  if (!isCode(currency) || !isCode(value.currency)) return { ...value, currency };
  return fromMajor(toMajor(value), currency);
}

export function amountAllowed(currency: string, locale?: string): string {
  const mostMinor = money.shape.minor.maxValue ?? 0;
  const most = isCode(currency) ? mostMinor / 10 ** minorDigits(currency) : mostMinor;
  return rangeText({ label: '', min: 0, max: most, unit: currency }, false, locale);
}
