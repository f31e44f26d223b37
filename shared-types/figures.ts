import { minorDigits, toMajor, type Money } from './money.ts';

/*
 * How figures are written, on screen, on the sheet and in sentences alike: true minus, narrow no-break space before the
 * per cent sign, thousands by locale.
 */

const narrowSpace = '\u202f';
const minus = '\u2212';

/** The language the screens are written in. */
export const locale = 'en-GB';

const withTrueMinus = (text: string): string => text.replace(/-/g, minus);

/** A number with a fixed count of decimals. */
export function number(value: number, decimals = 0): string {
  return withTrueMinus(
    new Intl.NumberFormat(locale, {
      minimumFractionDigits: decimals,
      maximumFractionDigits: decimals,
      signDisplay: 'negative',
    }).format(value),
  );
}

/** A share as a whole percentage: 0.31 -> `31 %`. */
export function percent(share: number): string {
  return `${number(share * 100)}${narrowSpace}%`;
}

/** A share with its sign: 0.31 -> `+31 %`, -0.18 -> `−18 %`. */
export function signedPercent(share: number): string {
  return `${Math.round(share * 100) > 0 ? '+' : ''}${percent(share)}`;
}

/** An energy margin: `+31 %`, or `more than +300 %` where the search stopped. */
export function marginText(margin: { readonly value: number; readonly capped: boolean }): string {
  return margin.capped ? `more than ${signedPercent(margin.value)}` : signedPercent(margin.value);
}

/** Money with its currency code: whole units where there are no cents, for example `84 EUR`, `12.50 EUR`. */
export function moneyText(value: Money): string {
  const whole = value.minor % 10 ** minorDigits(value.currency) === 0;
  return `${number(toMajor(value), whole ? 0 : minorDigits(value.currency))} ${value.currency}`;
}

/** A calendar date, `3 May 2027`, free of time zones. */
export function dateText(isoDate: string): string {
  return new Intl.DateTimeFormat(locale, {
    day: 'numeric',
    month: 'long',
    year: 'numeric',
    timeZone: 'UTC',
  }).format(new Date(`${isoDate}T00:00:00Z`));
}
