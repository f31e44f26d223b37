import type { Money } from '../../../shared-types/money.ts';
import type { UpgradeMoney } from '../../../shared-types/upgrade.ts';
import { amountsIn } from './amounts.ts';
import { pricesOf, resaleOf, type PricedLine } from './priced-line.ts';

/** The lines of a kit before and after a change. */
export interface PricedChange {
  readonly before: readonly PricedLine[];
  readonly after: readonly PricedLine[];
}

/**
 * What a change of a kit costs: what must be bought that needed not be, less what the owned pieces fetch that stay behind. Both
 * in the rider's currency; amounts in others stand apart.
 */
export function upgradeMoney({ before, after }: PricedChange, currency: string): UpgradeMoney {
  const toBuy = amountsIn([...after.flatMap(bought), ...before.flatMap(bought).map(negated)], currency);
  const leaving = before
    .map((line) => ({ line, count: line.owned - ownedIn(after, line.itemId) }))
    .filter(({ count }) => count > 0);
  const resale = amountsIn(
    leaving.flatMap(({ line, count }) => resaleOf(line, count)),
    currency,
  );
  return {
    toBuy: toBuy.total,
    resale: resale.total,
    resaleUnknown: leaving.filter(({ line }) => line.resale === null).map(({ line }) => line.label),
    net: { minor: toBuy.total.minor - resale.total.minor, currency },
    apart: { toBuy: toBuy.notConverted, resale: resale.notConverted },
  };
}

function bought(line: PricedLine): readonly Money[] {
  return pricesOf(line, line.carried - line.owned);
}

function negated(money: Money): Money {
  return { ...money, minor: -money.minor };
}

function ownedIn(lines: readonly PricedLine[], itemId: string): number {
  return lines.find((line) => line.itemId === itemId)?.owned ?? 0;
}
