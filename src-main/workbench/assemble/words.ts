import { formatNumber, percent, wordsLocale } from '../../../shared-types/figures.ts';

/* Figures in the language of the words that stand around them. */

export function decimal(value: number, digits = 0): string {
  return formatNumber(value, { digits, locale: wordsLocale });
}

export function inPercent(share: number, digits = 0): string {
  return percent(share, { digits, locale: wordsLocale });
}
