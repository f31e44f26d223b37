import type { EnergyMargin } from './comparison.ts';
import { minorDigits, toMajor, type Money } from './money.ts';

/*
 * How figures are written, on screen, on the sheet and in sentences alike: a true minus, a narrow no-break space before
 * the per cent sign, units bound to their figures, thousands by locale.
 */

const trueMinus = '\u2212';
const narrowSpace = '\u202f';
const hardSpace = '\u00a0';

/** The language of the words; sentences and sheets take their figures in it too. */
export const wordsLocale = 'en-GB';

/** The system's, until a screen knows which one the rider chose. */
let ownLocale: () => string | undefined = () => undefined;

/** Says where figures that name no locale find the rider's own. */
export function followLocale(locale: () => string | undefined): void {
  ownLocale = locale;
}

export interface NumberStyle {
  readonly digits?: number;
  readonly signed?: boolean;
  /** Keep trailing zeros, so that figures under each other line up. */
  readonly fixed?: boolean;
  /** The rider's own when left out. */
  readonly locale?: string | undefined;
}

/** A number with a true minus; rounding never leaves a signed zero. What is no number is a dash. */
export function formatNumber(value: number, style: NumberStyle = {}): string {
  const { digits = 0, signed = false, fixed = false, locale = ownLocale() } = style;
  if (!Number.isFinite(value)) return '–';
  const format = new Intl.NumberFormat(locale, {
    minimumFractionDigits: fixed ? digits : 0,
    maximumFractionDigits: digits,
    signDisplay: signed ? 'exceptZero' : 'negative',
  });
  return format.format(value).replace('-', trueMinus);
}

/** Number and unit, kept on one line. */
export function withUnit(value: number, unit: string, style: NumberStyle = {}): string {
  return `${formatNumber(value, style)}${hardSpace}${unit}`;
}

const wholeWattHoursFrom = 10;

/** Below 10 Wh a tenth matters to a phone; above it does not. */
export function wattHours(value: number, locale?: string): string {
  return withUnit(value, 'Wh', { digits: Math.abs(value) < wholeWattHoursFrom ? 1 : 0, locale });
}

export function grams(value: number, locale?: string): string {
  return withUnit(value, 'g', { locale });
}

/** A share as a percentage: 0.31 is `31 %`. */
export function percent(share: number, style: NumberStyle = {}): string {
  return `${formatNumber(share * 100, style)}${narrowSpace}%`;
}

/** The figure of a margin: `+31 %`; with no limit found, `more than` the largest that was tried. */
export function marginFigure(
  { value, capped }: Pick<EnergyMargin, 'value' | 'capped'>,
  locale?: string,
): string {
  return `${capped ? 'more than ' : ''}${percent(value, { signed: true, locale })}`;
}

/** The amount alone, for columns whose head names the currency; whole amounts without decimals. */
export function amount(value: Money, locale = ownLocale()): string {
  const digits = minorDigits(value.currency);
  const format = new Intl.NumberFormat(locale, {
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
    trailingZeroDisplay: 'stripIfInteger',
  });
  return format.format(toMajor(value)).replace('-', trueMinus);
}

/** Amount and ISO 4217 code. */
export function moneyText(value: Money, locale?: string): string {
  return `${amount(value, locale)}${hardSpace}${value.currency}`;
}
