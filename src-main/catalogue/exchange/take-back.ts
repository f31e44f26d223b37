import type { AddedEntries, FormerState } from '../../../shared-types/exchange.ts';
import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import { inTransaction, type WriteDb } from '../connection.ts';
import { removeItems } from '../item-removal.ts';
import { hasItem } from '../items.ts';
import { removeReading } from '../readings.ts';
import { removeScenario } from '../scenarios.ts';
import { change } from '../statements.ts';
import { removeTour } from '../tours.ts';
import { readContent } from './content.ts';
import { entriesOf, judgeFile, type EntryRules } from './judge-file.ts';
import { readCatalogueFile } from './read-file.ts';
import { storeEntries, takenCounts } from './store-entries.ts';

/** What stood in the catalogue is put back as it was, whatever the rules say of it today. */
const noRules: EntryRules = { tourFaults: () => [], readingFaults: () => [] };

/**
 * Puts what a taking changed back as it was, and removes what it added: all of it or nothing. Refused where something else
 * has come to refer to what would go.
 */
export function takeBack(
  write: WriteDb,
  { text, added }: FormerState,
): Outcome<{ readonly putBack: number }> {
  const file = readCatalogueFile(text);
  if (!file.ok) return file;
  return allOrNothing(write, () => {
    const stored = readContent(write);
    const judged = judgeFile({
      file: file.value,
      stored,
      rules: noRules,
      isLeftOut: () => false,
      takesSettings: true,
    });
    const refused = entriesOf(judged).find(({ fate }) => fate === 'refused');
    if (refused !== undefined)
      return failure('in-use', `${refused.label} can’t be put back: ${why(refused)}.`);
    storeEntries(write, judged);
    const removed = removeAdded(write, added);
    const { added: restored, changed } = takenCounts(judged);
    return removed.ok ? success({ putBack: restored + changed }) : removed;
  });
}

function why({ reasons: [first] }: ReturnType<typeof entriesOf>[number]): string {
  return first === undefined
    ? 'it is refused'
    : `${first.path} must be ${first.allowed}, and is ${first.got}`;
}

/** What is gone already is let be. Items last: the others may refer to them. */
function removeAdded(
  write: WriteDb,
  { items, tours, scenarios, readings, estimates }: AddedEntries,
): Outcome<unknown> {
  for (const { itemId, measure } of estimates)
    change(write, 'DELETE FROM kept_estimates WHERE item_id = ? AND measure = ?', itemId, measure);
  for (const id of readings) removeReading(write, id);
  for (const id of scenarios) removeScenario(write, id);
  for (const id of tours) removeTour(write, id);
  const there = items.filter((id) => hasItem(write, id));
  return removeItems(write, there);
}

/** Carries a refusal out of a transaction, which only what is thrown undoes. */
class Refused extends Error {
  readonly outcome: Outcome<never>;

  constructor(outcome: Outcome<never>) {
    super('refused');
    this.outcome = outcome;
  }
}

function allOrNothing<T>(write: WriteDb, work: () => Outcome<T>): Outcome<T> {
  try {
    return inTransaction(write, () => {
      const outcome = work();
      if (!outcome.ok) throw new Refused(outcome);
      return outcome;
    });
  } catch (thrown) {
    if (thrown instanceof Refused) return thrown.outcome;
    throw thrown;
  }
}
