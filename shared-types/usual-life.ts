import type { ItemKind } from './item.ts';

/** Years from new to done with, where the rider gives none (common practice, no source). */
export const usualLifeYears: Readonly<Record<ItemKind, number>> = {
  device: 5,
  bank: 5,
  panel: 8,
  'generator-hub': 10,
  converter: 6,
  'wall-charger': 8,
  accessory: 4,
};
