import type { CallInput, CsvAddition, CsvColumn, CsvReading } from '../../shared-types/contract.ts';
import { countOfItems } from '../parts/text/count-of-items.ts';
import type { Item, ItemDraft, ItemKind } from '../../shared-types/item.ts';
import type { ItemState } from '../../shared-types/item-common.ts';
import { handOver } from './hand-over.ts';
import type { Outcome } from '../../shared-types/outcome.ts';
import type { Calls } from './calls.ts';
import { CsvImportState } from './csv-import.svelte.ts';
import { draftOf } from './draft-of.ts';
import type { EditHistory, EditStep } from './edit-history.svelte.ts';
import { Form } from './form.svelte.ts';
import { KeptForms } from './kept-forms.ts';
import { NewForm } from './new-form.svelte.ts';
import { mergedRows, rowsWithout } from './merged-rows.ts';
import {
  additionsStep,
  additionStep,
  changeStep,
  listPlace,
  placeOf,
  subjectOf,
  type RowStore,
} from './row-steps.ts';
import { Rows } from './rows.svelte.ts';
import { Turns } from './turns.ts';
import { noMembers, withMembers } from './with-members.ts';

/** Which items the inventory lists; kept while other screens are open. */
export interface ItemFilter {
  readonly kind: ItemKind | 'all';
  readonly state: ItemState | 'in-use' | 'all';
  readonly search: string;
}

export type ItemColumn = 'label' | 'kind' | 'state' | 'quantity' | 'massG' | 'price' | 'keyFigure' | 'mount';

/** What the inventory is listed by; kept while other screens are open. */
export interface ItemSort {
  readonly by: ItemColumn;
  readonly direction: 'ascending' | 'descending';
}

export const everyItem: ItemFilter = { kind: 'all', state: 'all', search: '' };

const told: Readonly<Record<ItemState, (label: string) => string>> = {
  owned: (label) => `${label} is owned.`,
  considering: (label) => `Considering ${label}.`,
  retired: (label) => `Retired ${label}.`,
};

const toldOfMany: Readonly<Record<ItemState, (count: number) => string>> = {
  owned: (count) => `${countOfItems(count)} owned now.`,
  considering: (count) => `Considering ${countOfItems(count)}.`,
  retired: (count) => `Retired ${countOfItems(count)}.`,
};

export class InventoryState {
  readonly rows = new Rows<Item>();
  filter = $state.raw<ItemFilter>({ kind: 'all', state: 'in-use', search: '' });
  sort = $state.raw<ItemSort>({ by: 'label', direction: 'ascending' });
  /** Ids of the items checked for a change of several at once. */
  checked = $state.raw<ReadonlySet<string>>(noMembers);
  /** The id of the row the rider was at last. */
  current = $state.raw<string | null>(null);
  readonly csv: CsvImportState;
  readonly forms = new KeptForms<Item>(
    (id, draft) => new Form(draft, { root: 'item', live: true, store: (given) => this.save(id, given) }),
  );
  readonly newItem = new NewForm<ItemDraft>(
    (draft) => new Form(draft, { root: 'item', live: false, store: (given) => this.add(given) }),
  );
  readonly #calls: Calls;
  readonly #changed: () => void;
  readonly #history: EditHistory;
  readonly #turns = new Turns();
  readonly #store: RowStore<Item> = {
    list: 'items',
    find: (id) => this.rows.find(id),
    put: (items) => this.#putBack(items),
    remove: (ids) => this.#removeAll(ids),
  };

  constructor(calls: Calls, changed: () => void, history: EditHistory) {
    this.#calls = calls;
    this.#changed = changed;
    this.#history = history;
    this.csv = new CsvImportState(this);
  }

  /** @returns whether they could be read */
  async load(): Promise<boolean> {
    const outcome = await this.#calls.ask('items.list', {});
    if (outcome.ok) this.rows.fill(outcome.value);
    return outcome.ok;
  }

  /** A form or a CSV holds what is not stored. The form of a removed item waits for the item to be put back. */
  get unsaved(): boolean {
    const edited = this.forms.unsavedIds.some((id) => this.rows.find(id) !== undefined);
    return edited || this.newItem.unsaved || this.csv.unstored !== null;
  }

  add(item: ItemDraft): Promise<Outcome<Item>> {
    return this.#history.during(async () => {
      const outcome = await this.#calls.submit('items.save', { item });
      if (!outcome.ok) return outcome;
      this.#take([outcome.value]);
      this.#history.record(additionStep(this.#store, outcome.value));
      this.#calls.notices.tell(`Added ${outcome.value.label}.`);
      return outcome;
    });
  }

  /** The state stays as it is now: an editor that was opened earlier may hold an older one. */
  save(id: string, draft: ItemDraft): Promise<Outcome<Item>> {
    return this.#history.during(async () => {
      const turn = this.#turns.take(id);
      const state = this.rows.find(id)?.state ?? draft.state;
      const outcome = await this.#calls.submit('items.save', { id, item: { ...draft, state } });
      if (outcome.ok && turn.settle()) this.#takeChange(outcome.value);
      return outcome;
    });
  }

  /** Moves an item between owned, considering and retired, with a notice that takes it back. */
  move(id: string, state: ItemState): Promise<void> {
    return this.#history.during(async () => {
      const before = this.rows.find(id);
      const outcome = await this.#setState('ask', id, state);
      if (!outcome.ok || before === undefined) return;
      const { label } = outcome.value;
      this.#offerUndo(told[state](label), {
        subject: subjectOf('items', id),
        undone: placeOf('items', before),
        redone: placeOf('items', before),
        undo: () => this.#setState('attempt', id, before.state),
        redo: () => this.#setState('attempt', id, state),
      });
    });
  }

  /** Moves several at once, with one notice that takes all of it back; what is in that state already is left alone. */
  moveAll(ids: ReadonlySet<string>, state: ItemState): Promise<void> {
    return this.#history.during(async () => {
      const before = this.rows.all.filter((item) => ids.has(item.id) && item.state !== state);
      if (before.length === 0) return;
      const changes = before.map(({ id }) => ({ id, state }));
      const back = before.map(({ id, state: former }) => ({ id, state: former }));
      const outcome = await this.#setStates('ask', changes);
      if (!outcome.ok) return;
      this.#offerUndo(toldOfMany[state](before.length), {
        subject: 'items',
        undone: listPlace('items'),
        redone: listPlace('items'),
        undo: () => this.#setStates('attempt', back),
        redo: () => this.#setStates('attempt', changes),
      });
    });
  }

  /** By this column, or the other way round when it is by this column already. */
  sortBy(by: ItemColumn): void {
    const turned = this.sort.by === by && this.sort.direction === 'ascending';
    this.sort = { by, direction: turned ? 'descending' : 'ascending' };
  }

  check(ids: readonly string[], checked: boolean): void {
    this.checked = withMembers(this.checked, ids, checked);
  }

  readCsv(text: string): Promise<Outcome<CsvReading>> {
    return this.#calls.ask('items.readCsv', { text });
  }

  addCsv(input: CallInput<'items.addCsv'>): Promise<Outcome<CsvAddition>> {
    return this.#history.during(async () => {
      const outcome = await this.#calls.ask('items.addCsv', input);
      if (outcome.ok && outcome.value.added.length > 0) this.#takeAdded(outcome.value.added);
      return outcome;
    });
  }

  csvColumns(): Promise<Outcome<readonly CsvColumn[]>> {
    return this.#calls.ask('items.csvColumns', {});
  }

  async saveCsv(ids: readonly string[]): Promise<void> {
    handOver(await this.#calls.ask('items.saveCsv', { ids: [...ids] }), this.#calls.notices);
  }

  async saveCsvTemplate(): Promise<void> {
    handOver(await this.#calls.ask('items.saveCsvTemplate', {}), this.#calls.notices);
  }

  async #setState(how: 'ask' | 'attempt', id: string, state: ItemState): Promise<Outcome<Item>> {
    const turn = this.#turns.take(id);
    const outcome = await this.#calls[how]('items.setState', { id, state });
    if (outcome.ok && turn.settle()) this.#take([outcome.value]);
    return outcome;
  }

  async #setStates(
    how: 'ask' | 'attempt',
    changes: CallInput<'items.setStates'>['changes'],
  ): Promise<Outcome<readonly Item[]>> {
    const turns = changes.map(({ id }) => this.#turns.take(id));
    const outcome = await this.#calls[how]('items.setStates', { changes });
    // The items come in the order of the changes.
    if (outcome.ok) this.#take(outcome.value.filter((_, place) => turns[place]?.settle() === true));
    return outcome;
  }

  /** Tells of a change of states with an undo that is the history's own. */
  #offerUndo(text: string, step: Omit<EditStep, 'words' | 'field'>): void {
    const recorded = this.#history.record({ ...step, words: text.replace(/\.$/, ''), field: null });
    const { subject } = recorded;
    this.#calls.notices.tell(text, () => void this.#history.undo(recorded), { subject });
  }

  /** Shows an item that another call has stored, as a change to be taken back. */
  adopt(item: Item): EditStep | null {
    const step = this.#takeChange(item);
    this.forms.adopt(item);
    return step;
  }

  #takeChange(item: Item): EditStep | null {
    const before = this.rows.find(item.id);
    const step = before === undefined ? null : changeStep(this.#store, before, item);
    if (step !== null) this.#history.record(step);
    this.#take([item]);
    return step;
  }

  #takeAdded(added: readonly Item[]): void {
    this.#take(added);
    const words = `Added ${countOfItems(added.length)} from the file`;
    this.#history.record(additionsStep(this.#store, added, words));
    this.#calls.notices.tell(`${words}.`);
  }

  async #putBack(items: readonly Item[]): Promise<Outcome<readonly Item[]>> {
    const outcome = await this.#calls.attempt('items.putBack', {
      items: items.map((item) => ({ id: item.id, item: draftOf(item) })),
    });
    if (!outcome.ok) return outcome;
    this.#take(outcome.value);
    for (const item of outcome.value) this.forms.adopt(item);
    return outcome;
  }

  async #removeAll(ids: readonly string[]): Promise<Outcome<readonly Item[]>> {
    const outcome = await this.#calls.attempt('items.remove', { ids: [...ids] });
    if (!outcome.ok) return outcome;
    this.rows.fill(rowsWithout(this.rows.all, ids));
    this.#changed();
    return outcome;
  }

  #take(items: readonly Item[]): void {
    this.rows.fill(mergedRows(this.rows.all, items));
    this.#changed();
  }
}
