import type { KeptEstimate, Measure } from '../../../shared-types/field-log.ts';
import type { Item } from '../../../shared-types/item.ts';
import { measuredField } from './measured-field.ts';

/** What a value of an item rests on, as long as it is the one that was stored from readings; null once it was typed anew. */
export function keptInUse(item: Item, measure: Measure, kept: readonly KeptEstimate[]): KeptEstimate | null {
  const known = kept.find((each) => each.itemId === item.id && each.measure === measure);
  if (known === undefined) return null;
  const field = measuredField(item, measure);
  return 'why' in field || field.value !== known.value ? null : known;
}
