import { z } from 'zod';
import { count } from './field.ts';

export const currencyCode = z
  .string({ error: 'a currency code of three letters (ISO 4217), for example EUR' })
  .regex(/^[A-Z]{3}$/, { error: 'a currency code of three capital letters (ISO 4217), for example EUR' });

/** Money in whole minor units (cents, pence, yen) of one ISO 4217 currency; never a floating amount. */
export const money = z.strictObject({
  minor: count({ label: 'Amount', unit: 'minor units', min: 0, max: 100_000_000 }),
  currency: currencyCode,
});
export type Money = z.infer<typeof money>;

/** Asked once for each currency: the platform takes its time, and a long list has an amount in each row. */
const knownDigits = new Map<string, number>();

/** How many decimals a currency has (JPY 0, EUR 2, TND 3), as the platform's locale data gives them. */
export function minorDigits(currency: string): number {
  const known =
    knownDigits.get(currency) ??
    new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ??
    2;
  knownDigits.set(currency, known);
  return known;
}

/** `12345` in EUR -> `123.45`: a plain decimal for fields and CSV. */
export function toMajor(value: Money): number {
  return value.minor / 10 ** minorDigits(value.currency);
}

/** `123.45` in EUR -> `12345` minor units, rounded to the nearest whole unit. */
export function fromMajor(amount: number, currency: string): Money {
  return { minor: Math.round(amount * 10 ** minorDigits(currency)), currency };
}
