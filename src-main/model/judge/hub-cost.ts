import type { HubCost, HubCostLine } from '../../../shared-types/comparison.ts';
import type { Money } from '../../../shared-types/money.ts';
import { amountsIn } from './amounts.ts';

/** A part of a generator hub's set: what it costs and weighs, net of what comes off for it. */
export interface HubPart {
  readonly part: string;
  /** Of all pieces; null for what only comes off. */
  readonly price: Money | null;
  readonly netG: number;
  /** Share of its grams on the front wheel, 0..1. */
  readonly frontWheelShare: number;
}

/** Adds up what a generator hub really costs. Parts that cost and weigh nothing are left out. */
export function hubCostOf(parts: readonly HubPart[], currency: string): HubCost {
  const counted = parts.filter(({ price, netG }) => (price?.minor ?? 0) !== 0 || netG !== 0);
  const prices = counted.flatMap(({ price }) => (price === null ? [] : [price]));
  const { total, notConverted } = amountsIn(prices, currency);
  return {
    lines: counted.map(({ part, price, netG }): HubCostLine => ({ part, price, netG })),
    total,
    notConverted,
    netG: counted.reduce((sum, { netG }) => sum + netG, 0),
    frontWheelG: counted.reduce((sum, { netG, frontWheelShare }) => sum + netG * frontWheelShare, 0),
  };
}
