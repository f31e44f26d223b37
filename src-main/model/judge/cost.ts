import type { Cost } from '../../../shared-types/comparison.ts';
import type { Money } from '../../../shared-types/money.ts';
import { amountsIn } from './amounts.ts';

/** One line of a kit with its prices. */
export interface PricedLine {
  readonly itemId: string;
  readonly label: string;
  /** How many are carried, and how many of these the rider owns already. */
  readonly carried: number;
  readonly owned: number;
  /** Of one, with what it takes to fit it (a hub: its price and its wheel's). */
  readonly prices: readonly Money[];
}

/**
 * What a kit costs to buy now, and whole. Owned items are free. Amounts in another currency than the rider's are listed
 * apart, never converted.
 */
export function costOf(lines: readonly PricedLine[], currency: string): Cost {
  const times = (count: (line: PricedLine) => number): Money[] =>
    lines.flatMap((line) => line.prices.map((price) => ({ ...price, minor: price.minor * count(line) })));
  const bought = amountsIn(
    times(({ carried, owned }) => carried - owned),
    currency,
  );
  return {
    toBuy: bought.total,
    whole: amountsIn(
      times(({ carried }) => carried),
      currency,
    ).total,
    notConverted: bought.notConverted,
    lines: lines.map((line) => ({
      itemId: line.itemId,
      label: line.label,
      quantity: line.carried,
      owned: line.owned >= line.carried,
      whole: {
        minor: line.prices
          .filter((price) => price.currency === (line.prices[0]?.currency ?? currency))
          .reduce((total, price) => total + price.minor * line.carried, 0),
        currency: line.prices[0]?.currency ?? currency,
      },
    })),
  };
}
