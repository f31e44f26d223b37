import type { Measure, StoredEstimate } from '../../../shared-types/field-log.ts';
import type { Item } from '../../../shared-types/item.ts';
import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import { inTransaction, type WriteDb } from '../../catalogue/connection.ts';
import { listItems, saveItem } from '../../catalogue/items.ts';
import { keepEstimate, listKeptEstimates } from '../../catalogue/reading-estimates.ts';
import { listReadings } from '../../catalogue/readings.ts';
import { itemEstimates } from './item-estimates.ts';
import { inDigitsKept, measuredField } from './measured-field.ts';

/** Stores what the readings say as the value of the item, with the date and how many they were: both or neither. */
export function storeEstimate(
  write: WriteDb,
  itemId: string,
  measure: Measure,
  today: string,
): Outcome<StoredEstimate> {
  return inTransaction(write, () => {
    const items = listItems(write);
    const before = items.find(({ id }) => id === itemId);
    if (before === undefined) return failure('not-found', 'That item is not in the catalogue (any more).');
    const found = itemEstimates([before], listReadings(write), listKeptEstimates(write)).find(
      (each) => each.measure === measure,
    );
    const field = measuredField(before, measure);
    if (found === undefined || found.estimate === null || found.offer.as !== 'open' || 'why' in field)
      return failure('not-found', whyNot(found?.offer));
    const { value, low, high } = found.estimate;
    const stored = inDigitsKept(value * field.factor);
    const item = putBack(write, field.put(stored, today));
    keepEstimate(write, {
      itemId,
      measure,
      value: stored,
      low: Math.min(stored, low * field.factor),
      high: Math.max(stored, high * field.factor),
      readings: found.readings,
      on: today,
    });
    const now = measuredField(item, measure);
    return success({ item, before, words: 'why' in now ? '' : `${now.name}: ${now.now}` });
  });
}

function whyNot(offer: { readonly as: string; readonly why?: string } | undefined): string {
  if (offer?.as === 'stored') return 'The item has this value already.';
  return offer?.why ?? 'There are no readings for this value (any more).';
}

function putBack(write: WriteDb, { id, ...draft }: Item): Item {
  return saveItem(write, draft, id);
}
