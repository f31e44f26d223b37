import type { Limits } from '../../shared-types/limits.ts';

/** The limits in the row of settings. */
export interface LimitColumns {
  readonly limit_to_buy: number | null;
  readonly limit_g: number | null;
  readonly limit_front_wheel_g: number | null;
  readonly limit_margin: number | null;
  readonly limit_by_air: 0 | 1;
}

export function limitColumns(limits: Limits): LimitColumns {
  return {
    limit_to_buy: limits.toBuy,
    limit_g: limits.grams,
    limit_front_wheel_g: limits.frontWheelGrams,
    limit_margin: limits.margin,
    limit_by_air: limits.byAir ? 1 : 0,
  };
}

export function limitsOf(row: LimitColumns): Limits {
  return {
    toBuy: row.limit_to_buy,
    grams: row.limit_g,
    frontWheelGrams: row.limit_front_wheel_g,
    margin: row.limit_margin,
    byAir: row.limit_by_air === 1,
  };
}
