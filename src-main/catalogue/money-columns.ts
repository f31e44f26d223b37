import type { MoneySettings } from '../../shared-types/money-settings.ts';

/** What money costs, in the row of settings. */
export interface MoneyColumns {
  readonly money_rate_pct: number;
  readonly touring_days_a_year: number;
  readonly wall_night_minor: number;
  readonly wall_night_currency: string;
}

export function moneyColumns({ ratePct, touringDaysAYear, wallNight }: MoneySettings): MoneyColumns {
  return {
    money_rate_pct: ratePct,
    touring_days_a_year: touringDaysAYear,
    wall_night_minor: wallNight.minor,
    wall_night_currency: wallNight.currency,
  };
}

export function moneyOf(row: MoneyColumns): MoneySettings {
  return {
    ratePct: row.money_rate_pct,
    touringDaysAYear: row.touring_days_a_year,
    wallNight: { minor: row.wall_night_minor, currency: row.wall_night_currency },
  };
}
