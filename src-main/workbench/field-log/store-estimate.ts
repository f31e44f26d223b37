import type { KeptEstimate, Measure, StoredEstimate } from '../../../shared-types/field-log.ts';
import type { Item } from '../../../shared-types/item.ts';
import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import { inTransaction, type WriteDb } from '../../catalogue/connection.ts';
import { listItems, saveItem } from '../../catalogue/items.ts';
import { keepEstimate, listKeptEstimates } from '../../catalogue/reading-estimates.ts';
import { listReadings } from '../../catalogue/readings.ts';
import { plugConverter } from './hub-yield.ts';
import { itemEstimates } from './item-estimates.ts';
import { keptWords } from './kept-words.ts';
import { inDigitsKept, measuredField, type MeasuredField, type NoField } from './measured-field.ts';

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
    const log = {
      readings: listReadings(write),
      kept: listKeptEstimates(write),
      converter: plugConverter(items),
    };
    const found = itemEstimates([before], log).find((each) => each.measure === measure);
    const field = measuredField(before, measure);
    if (found === undefined || found.estimate === null || found.offer.as !== 'open' || 'why' in field)
      return failure('not-found', whyNot(found?.offer));
    const { value, low, high } = found.estimate;
    const stored = inDigitsKept(value * field.factor);
    const item = putBack(write, field.put(stored, today));
    const kept = {
      itemId,
      measure,
      value: stored,
      low: Math.min(stored, low * field.factor),
      high: Math.max(stored, high * field.factor),
      readings: found.readings,
      on: today,
    };
    keepEstimate(write, kept);
    return success({ item, before, words: usedWords(field, measuredField(item, measure), kept) });
  });
}

/** The value as it is now used, what it rests on, and what stood there before. */
function usedWords(before: MeasuredField, now: MeasuredField | NoField, kept: KeptEstimate): string {
  const value = 'why' in now ? '' : now.now;
  return `${before.name}: ${value}, ${keptWords(kept)}; before: ${before.now}`;
}

function whyNot(offer: { readonly as: string; readonly why?: string } | undefined): string {
  if (offer?.as === 'stored') return 'The item has this value already.';
  return offer?.why ?? 'There are no readings for this value (any more).';
}

function putBack(write: WriteDb, { id, ...draft }: Item): Item {
  return saveItem(write, draft, id);
}
