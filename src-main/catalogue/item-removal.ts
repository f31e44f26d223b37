import { failure, success, type Outcome } from '../../shared-types/outcome.ts';
import type { Item, ItemDraft } from '../../shared-types/item.ts';
import { inTransaction, type ReadDb, type WriteDb } from './connection.ts';
import { findItem, saveItem } from './items.ts';
import { change, selectOne } from './statements.ts';

/** Removes all of them or none, and answers what they were. An item that a scenario or a tour names is kept. */
export function removeItems(write: WriteDb, ids: readonly string[]): Outcome<Item[]> {
  return inTransaction(write, () => {
    const items = ids.map((id) => findItem(write, id)).filter((item) => item !== null);
    if (items.length < ids.length)
      return failure('not-found', 'An item to remove is not in the catalogue (any more).');
    const needed = items.map((item) => neededBy(write, item)).find((reason) => reason !== null);
    if (needed !== undefined) return failure('in-use', needed);
    for (const id of ids) change(write, 'DELETE FROM items WHERE id = ?', id);
    return success(items);
  });
}

/** Puts items back under the ids they had: all of them or none. */
export function putItemsBack(
  write: WriteDb,
  items: readonly { readonly id: string; readonly item: ItemDraft }[],
): Item[] {
  return inTransaction(write, () => items.map(({ id, item }) => saveItem(write, item, id)));
}

function neededBy(read: ReadDb, { id, label }: Item): string | null {
  const scenario = labelOf(
    read,
    'SELECT label FROM scenario_kit JOIN scenarios ON scenarios.id = scenario_id WHERE item_id = ?',
    id,
  );
  if (scenario !== null) return `${label} is carried by the scenario ${scenario}: take it out there first.`;
  const tour = labelOf(
    read,
    'SELECT label FROM tour_left_at_home JOIN tours ON tours.id = tour_id WHERE item_id = ?',
    id,
  );
  if (tour !== null) return `${label} is left at home on the tour ${tour}: untick it there first.`;
  const isRead = selectOne(read, 'SELECT 1 FROM readings WHERE item_id = ?', id) !== undefined;
  return isRead ? `${label} has readings in the field log: remove them there first, or retire it.` : null;
}

function labelOf(read: ReadDb, sql: string, id: string): string | null {
  return (selectOne(read, sql, id) as { readonly label: string } | undefined)?.label ?? null;
}
