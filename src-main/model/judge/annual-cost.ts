/** A thing bought, used for some years and sold for what is left of it. */
export interface Purchase {
  /** At the start, in any unit of money. */
  readonly price: number;
  /** At the end, in the same unit. */
  readonly resale: number;
  /** Years of use, above 0; they need not be whole. */
  readonly years: number;
}

/**
 * Present worth of 1 paid at the end of each year for `years` years: (1 - (1 + r)^-n) / r, which is n without interest
 * (standard annuity factor; checked in test/published/annual-cost.spec.ts).
 *
 * @param rate interest a year as a share, 0.05 for 5 %; at least 0
 */
export function annuityFactor(rate: number, years: number): number {
  if (rate === 0) return years;
  // expm1 and log1p keep their digits where the rate is tiny.
  return -Math.expm1(-years * Math.log1p(rate)) / rate;
}

/**
 * Equivalent annual cost: the even payment at the end of each year of use that is worth as much as the price less what the
 * thing fetches at the end, (P - S / (1 + r)^n) / A(n, r). Prices are taken to stay as they are.
 *
 * @param rate interest a year as a share, at least 0
 * @returns in the unit of the price; below 0 where it fetches more than it cost
 */
export function equivalentAnnualCost({ price, resale, years }: Purchase, rate: number): number {
  return (price - resale / (1 + rate) ** years) / annuityFactor(rate, years);
}
