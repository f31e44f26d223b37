import { z } from 'zod';
import { count, quantity } from './field.ts';
import { money } from './money.ts';

/** What the rider's money costs, how much the kit is used, and what a night with a wall costs. */
export const moneySettings = z.strictObject({
  ratePct: quantity({
    label: 'Interest',
    unit: '% a year',
    min: 0,
    max: 30,
    step: 0.1,
    hint: 'What the money would earn elsewhere; at 0 the price is spread evenly over the years of use.',
  }),
  touringDaysAYear: count({
    label: 'Touring days a year',
    min: 1,
    max: 365,
    hint: 'All tours together: what a year of the kit costs is shared among them.',
  }),
  /** What a night with a wall costs above a wild camp. */
  wallNight: money,
});
export type MoneySettings = z.infer<typeof moneySettings>;

/** A month of touring a year (common practice, no source). */
const usualTouringDays = 30;

/** What a new catalogue starts with: no interest, and nights that cost nothing more. */
export function usualMoney(currency: string): MoneySettings {
  return { ratePct: 0, touringDaysAYear: usualTouringDays, wallNight: { minor: 0, currency } };
}
