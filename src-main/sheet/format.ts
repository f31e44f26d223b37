import type { EnergyMargin } from '../../shared-types/comparison.ts';
import { fullDate } from '../../shared-types/dates.ts';
import * as figures from '../../shared-types/figures.ts';
import type { Money } from '../../shared-types/money.ts';

/* The sheet's figures, in the language of its words. */

const locale = figures.wordsLocale;

const isoDateLength = 'YYYY-MM-DD'.length;

/** Stands where there is nothing to say. */
export const nothing = '–';

/** A plain figure with thousands separators and a fixed count of decimals, so that columns line up. */
export function decimalText(value: number, decimals = 0): string {
  return figures.formatNumber(value, { digits: decimals, fixed: true, locale });
}

export function whText(valueWh: number): string {
  return decimalText(valueWh, 1);
}

export function gramsText(massG: number): string {
  return figures.grams(massG, locale);
}

export function moneyText(money: Money): string {
  return figures.moneyText(money, locale);
}

export function percentText(share: number): string {
  return figures.percent(share, { locale });
}

export function marginText(margin: EnergyMargin): string {
  return figures.marginFigure(margin, locale);
}

/** `2027-05-03`, or an instant of that day, -> `3 May 2027`, the same day in every time zone. */
export function dateText(isoDate: string): string {
  return fullDate(isoDate.slice(0, isoDateLength), locale);
}

export function countText(count: number, one: string, many: string): string {
  return `${decimalText(count)} ${count === 1 ? one : many}`;
}
