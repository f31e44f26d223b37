import type { Money } from '../../../shared-types/money.ts';

/** Amounts added up in one currency; those in others stand apart, one a currency, and are never converted. */
export interface Amounts {
  readonly total: Money;
  readonly notConverted: readonly Money[];
}

export function amountsIn(prices: readonly Money[], currency: string): Amounts {
  const sumOf = (code: string): Money => ({
    minor: prices.filter((price) => price.currency === code).reduce((sum, { minor }) => sum + minor, 0),
    currency: code,
  });
  const others = [...new Set(prices.map((price) => price.currency))].filter((code) => code !== currency);
  return { total: sumOf(currency), notConverted: others.map(sumOf).filter(({ minor }) => minor !== 0) };
}
