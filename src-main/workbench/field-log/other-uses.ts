import type { Item } from '../../../shared-types/item.ts';
import type { Reading } from '../../../shared-types/reading.ts';
import { decimal } from '../assemble/words.ts';
import { plugConverter } from './hub-yield.ts';
import { itemEstimates } from './item-estimates.ts';
import type { OtherUse } from './on-tour-words.ts';

const digits = 2;

/** Devices whose use, by their readings, is surely not the planned one: their interval leaves it out. */
export function otherUses(items: readonly Item[], readings: readonly Reading[]): readonly OtherUse[] {
  const devices = items.filter(({ kind, state }) => kind === 'device' && state === 'owned');
  const log = { readings, kept: [], converter: plugConverter(items) };
  return itemEstimates(devices, log).flatMap(({ itemId, name, unit, estimate, catalogue }) => {
    if (estimate === null || catalogue === null) return [];
    if (catalogue.value >= estimate.low && catalogue.value <= estimate.high) return [];
    const label = devices.find(({ id }) => id === itemId)!.label;
    const inWords = (value: number): string => `${decimal(value, digits)} ${unit}`;
    return [{ label, name, measured: inWords(estimate.value), planned: inWords(catalogue.value) }];
  });
}
