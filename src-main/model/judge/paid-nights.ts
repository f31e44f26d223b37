import type { PaidNights } from '../../../shared-types/comparison.ts';
import type { Money } from '../../../shared-types/money.ts';

/**
 * What the nights with a wall cost that a plan cannot do without. The price is the rider's own and keeps its currency; a price
 * of 0 is one that was never given, so that nothing is said.
 */
export function paidNightsOf(nights: number, wallNight: Money): PaidNights {
  return {
    nights,
    cost: wallNight.minor === 0 ? null : { ...wallNight, minor: wallNight.minor * nights },
  };
}
