import type { Money } from '../../../shared-types/money.ts';
import { amountsIn, type Amounts } from './amounts.ts';
import { equivalentAnnualCost } from './annual-cost.ts';
import { pricesOf, resaleOf, type MoneyGround, type PricedLine } from './priced-line.ts';

const perCent = 100;

/**
 * What the whole kit costs a tour-day over its life: the equivalent annual cost of each line over its own years of use, added
 * up and shared among the touring days of a year. A resale in another currency than the price lowers that currency's amount.
 *
 * @returns whole minor units
 */
export function perTourDayOf(lines: readonly PricedLine[], { currency, money }: MoneyGround): Amounts {
  const rate = money.ratePct / perCent;
  const yearly = amountsIn(
    lines.flatMap((line) => yearlyOf(line, rate)),
    currency,
  );
  const aDay = ({ minor, currency: code }: Money): Money => ({
    minor: wholeUnits(minor / money.touringDaysAYear),
    currency: code,
  });
  return {
    total: aDay(yearly.total),
    notConverted: yearly.notConverted.map(aDay).filter(({ minor }) => minor !== 0),
  };
}

/** The cost is linear in price and resale, so each amount is spread by itself, in its own currency. */
function yearlyOf(line: PricedLine, rate: number): readonly Money[] {
  const years = line.lifeYears;
  const spread = (price: number, resale: number): number =>
    equivalentAnnualCost({ price, resale, years }, rate);
  return [
    ...pricesOf(line, line.carried).map((paid) => ({ ...paid, minor: spread(paid.minor, 0) })),
    ...resaleOf(line, line.carried).map((fetched) => ({ ...fetched, minor: spread(0, fetched.minor) })),
  ];
}

/** Rounding a small negative number leaves a minus at the zero, which adding 0 takes off. */
function wholeUnits(minor: number): number {
  return Math.round(minor) + 0;
}
