import type { ItemDraft, ItemDraftOf, ItemKind } from '../../../shared-types/item.ts';
import { fromMajor } from '../../../shared-types/money.ts';
import { usualItem } from '../../../shared-types/usual-item.ts';

type Changes<K extends ItemKind> = Omit<Partial<ItemDraftOf<K>>, 'kind'>;

const noted = 'An example: write your own over it, or remove the line.';

function example<K extends ItemKind>(kind: K, currency: string, changes: Changes<K>): ItemDraftOf<K> {
  return { ...usualItem(kind, currency), notes: noted, ...changes };
}

/** Lines for a rider to write their own over: every kind, and each form a figure can be given in. */
export function exampleItems(currency: string): readonly ItemDraft[] {
  const price = (amount: number) => fromMajor(amount, currency);
  return [
    example('device', currency, { label: 'Phone', price: price(300), lifeYears: 4, resale: price(60) }),
    example('device', currency, {
      label: 'Navigation unit',
      capacity: { as: 'wh', wh: 5.2 },
      use: { as: 'day', whPerDay: 3 },
    }),
    example('bank', currency, { label: '10 Ah bank', price: price(25) }),
    example('bank', currency, {
      label: '74 Wh bank, measured',
      capacity: { as: 'wh', wh: 74 },
      measuredDeliverableWh: { value: 61, on: '2026-03-14' },
    }),
    example('panel', currency, {
      label: '15 W panel',
      state: 'considering',
      price: price(70),
      measuredRatedW: { value: 11.5, on: '2026-03-14' },
    }),
    example('generator-hub', currency, { label: '3 W hub', state: 'considering', price: price(120) }),
    example('generator-hub', currency, {
      label: 'Hub with measured curve',
      power: {
        as: 'curve',
        readAt: 'plug',
        points: [
          { speedKmh: 10, powerW: 1.2 },
          { speedKmh: 15, powerW: 2.6 },
          { speedKmh: 25, powerW: 4.8 },
        ],
      },
      measuredYield: { value: 0.93, on: '2026-05-02' },
    }),
    example('converter', currency, { label: 'Converter for the hub', price: price(80) }),
    example('wall-charger', currency, { label: '20 W charger', price: price(15) }),
    example('accessory', currency, { label: 'Cable, 1 m' }),
  ];
}
