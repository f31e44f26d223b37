import type { ItemDraft, ItemKind } from '../../../shared-types/item.ts';
import { usualItem } from '../../../shared-types/usual-item.ts';

/** Something a rider may have, ready to be put on the list and put right. */
export interface Suggestion {
  readonly words: string;
  readonly item: (currency: string) => ItemDraft;
}

const device = (
  label: string,
  mAh: number,
  whPerDay: number,
  importance: 'must-have' | 'nice-to-have',
): Suggestion => ({
  words: label,
  item: (currency) => ({
    ...usualItem('device', currency),
    ...{ label, importance, capacity: { as: 'mah', mAh, cellV: 3.7 }, use: { as: 'day', whPerDay } },
  }),
});

/** Devices of tourers, with figures of a usual size (common practice, no source). */
export const usualDevices: readonly Suggestion[] = [
  device('Phone', 4500, 9, 'must-have'),
  device('Navigation unit', 1800, 5, 'must-have'),
  device('Front and rear light', 3000, 3, 'nice-to-have'),
  device('Camera', 2200, 4, 'nice-to-have'),
  device('Head torch', 1500, 1, 'nice-to-have'),
  device('Reading tablet', 1700, 1.5, 'nice-to-have'),
  device('Other device', 3000, 4, 'nice-to-have'),
];

const massGAh = 17;

const bank = (ah: number): Suggestion => ({
  words: `${ah} Ah bank`,
  item: (currency) => ({
    ...usualItem('bank', currency),
    label: `${ah} Ah bank`,
    capacity: { as: 'mah', mAh: ah * 1000, cellV: 3.7 },
    massG: ah * massGAh + 30,
  }),
});

/** What is considered counts at its price, which only the rider can tell. */
const considered = (words: string, kind: ItemKind, massG: number): Suggestion => ({
  words,
  item: (currency) => ({
    ...usualItem(kind, currency),
    ...{ label: words, massG, state: 'considering', price: { minor: Number.NaN, currency } },
  }),
});

/** Kit of tourers: banks and a charger as if owned, what is dear as considered (common practice, no source). */
export const usualKit: readonly Suggestion[] = [
  bank(10),
  bank(20),
  {
    words: '20 W wall charger',
    item: (currency) => ({ ...usualItem('wall-charger', currency), label: '20 W wall charger', massG: 60 }),
  },
  considered('15 W folding panel', 'panel', 450),
  considered('3 W generator hub', 'generator-hub', 450),
  considered('Hub to USB converter', 'converter', 80),
];

/** What a list begins with, so that a rider changes figures rather than types them. */
export function firstItems(currency: string): readonly ItemDraft[] {
  const first = [...usualDevices.slice(0, 3), ...usualKit.slice(0, 3)];
  return first.map(({ item }) => item(currency));
}
