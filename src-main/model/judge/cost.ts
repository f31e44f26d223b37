import type { Cost } from '../../../shared-types/comparison.ts';
import type { Money } from '../../../shared-types/money.ts';

/** One line of a kit with its prices. */
export interface PricedLine {
  readonly itemId: string;
  readonly label: string;
  /** How many are carried, and how many of these the rider owns already. */
  readonly carried: number;
  readonly owned: number;
  /** Of one, with what it takes to fit it (a hub: its price and the wheel building). */
  readonly prices: readonly Money[];
}

/**
 * What a kit costs to buy now, and whole. Owned items are free. Amounts in another currency than the rider's are listed
 * apart, never converted.
 */
export function costOf(lines: readonly PricedLine[], currency: string): Cost {
  const amounts = lines.flatMap((line) =>
    line.prices.map((price) => ({ price, buy: line.carried - line.owned, carried: line.carried })),
  );
  const sum = (units: (amount: (typeof amounts)[number]) => number, of: string): number =>
    amounts
      .filter(({ price }) => price.currency === of)
      .reduce((total, amount) => total + amount.price.minor * units(amount), 0);
  const others = [...new Set(amounts.map(({ price }) => price.currency))].filter((code) => code !== currency);
  return {
    toBuy: { minor: sum((amount) => amount.buy, currency), currency },
    whole: { minor: sum((amount) => amount.carried, currency), currency },
    notConverted: others
      .map((code) => ({ minor: sum((amount) => amount.buy, code), currency: code }))
      .filter(({ minor }) => minor > 0),
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
