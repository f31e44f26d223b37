import type { EnergyMargin, Shortfall } from '../../shared-types/comparison.ts';
import { toMajor, type Money } from '../../shared-types/money.ts';

/** The words of the sheet are English, so its figures are too. */
const locale = 'en-GB';
const narrowNoBreakSpace = '\u202f';
const noBreakSpace = '\u00a0';
const trueMinus = '\u2212';
const percentPerShare = 100;

/** Stands where there is nothing to say. */
export const nothing = '–';

function trueMinusFor(text: string): string {
  return text.replace('-', trueMinus);
}

/** A plain figure with thousands separators; what rounds to zero has no sign. */
export function decimalText(value: number, decimals = 0): string {
  const format = new Intl.NumberFormat(locale, {
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
    signDisplay: 'negative',
  });
  return trueMinusFor(format.format(value));
}

export function whText(valueWh: number): string {
  return decimalText(valueWh, 1);
}

export function gramsText(massG: number): string {
  return `${decimalText(massG)}${noBreakSpace}g`;
}

export function moneyText(money: Money): string {
  const format = new Intl.NumberFormat(locale, { style: 'currency', currency: money.currency });
  return trueMinusFor(format.format(toMajor(money)));
}

export function percentText(share: number): string {
  return `${decimalText(share * percentPerShare)}${narrowNoBreakSpace}%`;
}

/** A share as a signed percentage: 0.31 is `+31 %`. */
export function signedPercentText(share: number): string {
  const format = new Intl.NumberFormat(locale, { maximumFractionDigits: 0, signDisplay: 'exceptZero' });
  return `${trueMinusFor(format.format(share * percentPerShare))}${narrowNoBreakSpace}%`;
}

/** The energy margin; `≥` when even the largest factor tried is carried. */
export function marginText(margin: EnergyMargin): string {
  const percent = signedPercentText(margin.value);
  return margin.capped ? `≥${noBreakSpace}${percent}` : percent;
}

export function shortfallText(shortfall: Shortfall | null): string {
  return shortfall === null ? nothing : `${shortfall.device}, day ${shortfall.day}`;
}

/** `2027-05-03` -> `3 May 2027`, the same day in every time zone. */
export function dateText(isoDate: string): string {
  const format = new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone: 'UTC' });
  return format.format(new Date(isoDate));
}

export function countText(count: number, one: string, many: string): string {
  return `${decimalText(count)} ${count === 1 ? one : many}`;
}
