import type { FieldUnit } from './parse.ts';
import { converted, tidied } from './units.ts';

/** Enough that a figure typed in this unit is shown again as it was typed. */
const shownDecimals: Readonly<Record<string, number>> = { oz: 2, lb: 2, mi: 2, mph: 2, ft: 1, '°F': 1 };
const mostDecimals = 20;

/** A kept value in the unit that the field shows. */
export function shownValue(value: number, { stored, shown }: FieldUnit): number {
  if (stored === shown) return tidied(value);
  const decimals = shownDecimals[shown ?? ''];
  const inShown = converted(value, stored, shown);
  return decimals === undefined ? inShown : Number(inShown.toFixed(decimals)) || 0;
}

/** A number as a field holds it: the locale's decimal sign, no thousands parted, no more decimals than it has. */
export function fieldText(value: number, locale?: string): string {
  if (!Number.isFinite(value)) return '';
  const format = new Intl.NumberFormat(locale, {
    useGrouping: false,
    maximumFractionDigits: mostDecimals,
    numberingSystem: 'latn',
  });
  // A keyboard has a hyphen, not every locale's minus.
  return `${value < 0 ? '-' : ''}${format.format(Math.abs(tidied(value)))}`;
}
