import { randomUUID } from 'node:crypto';
import type { Item, ItemDraft, ItemKind } from '../../shared-types/item.ts';
import type { ItemState, Mount } from '../../shared-types/item-common.ts';
import type { Money } from '../../shared-types/money.ts';
import { inTransaction, type ReadDb, type WriteDb } from './connection.ts';
import type { CommonPart } from './item-kinds/kind-part.ts';
import { clearKindPart, readKindPart, writeKindPart } from './item-kinds/kind-rows.ts';
import { change, putRow, selectAll, selectOne } from './statements.ts';

interface ItemRow {
  readonly id: string;
  readonly kind: ItemKind;
  readonly label: string;
  readonly state: ItemState;
  readonly quantity: number;
  readonly mass_g: number;
  readonly price_minor: number;
  readonly price_currency: string;
  readonly life_years: number | null;
  readonly resale_minor: number | null;
  readonly resale_currency: string | null;
  readonly mount: Mount;
  readonly notes: string;
}

/** All items, by label. */
export function listItems(read: ReadDb): Item[] {
  const rows = selectAll(read, 'SELECT * FROM items ORDER BY label COLLATE NOCASE, id') as ItemRow[];
  return rows.map((row) => itemOf(read, row));
}

export function findItem(read: ReadDb, id: string): Item | null {
  const row = selectOne(read, 'SELECT * FROM items WHERE id = ?', id) as ItemRow | undefined;
  return row === undefined ? null : itemOf(read, row);
}

export function hasItem(read: ReadDb, id: string): boolean {
  return selectOne(read, 'SELECT 1 FROM items WHERE id = ?', id) !== undefined;
}

/** With an id replaces that item, or puts it back; without one adds it. */
export function saveItem(write: WriteDb, draft: ItemDraft, id: string = randomUUID()): Item {
  return inTransaction(write, () => {
    clearKindPart(write, id);
    putRow(write, 'items', 'id', { ...rowOf(id, draft) });
    writeKindPart(write, id, draft);
    return { ...draft, id };
  });
}

/** Adds all of them or none. */
export function addItems(write: WriteDb, drafts: readonly ItemDraft[]): Item[] {
  return inTransaction(write, () => drafts.map((draft) => saveItem(write, draft)));
}

/** The item in its new state, or null when there is none of that id. */
export function setItemState(write: WriteDb, id: string, state: ItemState): Item | null {
  change(write, 'UPDATE items SET state = ? WHERE id = ?', state, id);
  return findItem(write, id);
}

/** A state to be set, by the id of its item. */
export interface StateChange {
  readonly id: string;
  readonly state: ItemState;
}

/** The items in their new states; null, and nothing changed, when one of the ids names none. */
export function setItemStates(write: WriteDb, changes: readonly StateChange[]): Item[] | null {
  if (!changes.every(({ id }) => hasItem(write, id))) return null;
  return inTransaction(write, () => changes.flatMap(({ id, state }) => setItemState(write, id, state) ?? []));
}

function rowOf(id: string, draft: ItemDraft): ItemRow {
  return {
    id,
    kind: draft.kind,
    label: draft.label,
    state: draft.state,
    quantity: draft.quantity,
    mass_g: draft.massG,
    price_minor: draft.price.minor,
    price_currency: draft.price.currency,
    life_years: draft.lifeYears,
    resale_minor: draft.resale?.minor ?? null,
    resale_currency: draft.resale?.currency ?? null,
    mount: draft.mount,
    notes: draft.notes,
  };
}

function itemOf(read: ReadDb, row: ItemRow): Item {
  const common: CommonPart = {
    id: row.id,
    label: row.label,
    state: row.state,
    quantity: row.quantity,
    massG: row.mass_g,
    price: { minor: row.price_minor, currency: row.price_currency },
    lifeYears: row.life_years,
    resale: moneyOrNone(row.resale_minor, row.resale_currency),
    mount: row.mount,
    notes: row.notes,
  };
  return { ...common, ...readKindPart(read, row.id, row.kind) };
}

/** The two columns of an amount are null together, as the constraint `resale_with_its_currency` has it. */
function moneyOrNone(minor: number | null, currency: string | null): Money | null {
  return minor === null || currency === null ? null : { minor, currency };
}
