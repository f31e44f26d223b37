import type { HubCost } from '../../shared-types/comparison.ts';
import { moneyText } from '../../shared-types/figures.ts';
import { display } from '../state/display.svelte.ts';

/** What a generator hub comes to: `The hub really costs 348 EUR and 535 g, 390 g of these on the front wheel, net`. */
export function hubCostFinding(cost: HubCost, locale?: string): string {
  const prices = [cost.total, ...cost.notConverted].map((price) => moneyText(price, locale));
  const front = `${display.mass(cost.frontWheelG, { locale })} of these on the front wheel, net`;
  return `The hub really costs ${prices.join(' and ')} and ${display.mass(cost.netG, { locale })}, ${front}`;
}
