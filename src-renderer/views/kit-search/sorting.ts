import type { FoundKit } from '../../../shared-types/kit-search.ts';

/** What found kits are sorted by; margin with the most first, the others with the least. */
export const sortings = {
  margin: 'Energy margin',
  toBuy: 'To buy',
  grams: 'Grams',
  frontWheelGrams: 'On the front wheel',
} as const;
export type Sorting = keyof typeof sortings;

export const directions = {
  margin: 'descending',
  toBuy: 'ascending',
  grams: 'ascending',
  frontWheelGrams: 'ascending',
} as const satisfies Readonly<Record<Sorting, string>>;

const figureOf: Readonly<Record<Sorting, (kit: FoundKit) => number>> = {
  margin: ({ margin }) => -margin.value,
  toBuy: ({ toBuy }) => toBuy.minor,
  grams: ({ grams }) => grams,
  frontWheelGrams: ({ frontWheelGrams }) => frontWheelGrams,
};

export function sorted(kits: readonly FoundKit[], by: Sorting): readonly FoundKit[] {
  const figure = figureOf[by];
  return kits.toSorted((a, b) => figure(a) - figure(b));
}
