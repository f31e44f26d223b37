import type { CsvReading } from '../../shared-types/contract.ts';
import type { Item, ItemDraft, ItemKind } from '../../shared-types/item.ts';
import type { ItemState } from '../../shared-types/item-common.ts';
import type { Outcome } from '../../shared-types/outcome.ts';
import type { Calls } from './calls.ts';
import { Rows } from './rows.svelte.ts';
import { Turns } from './turns.ts';

/** Which items the inventory lists; kept while other screens are open. */
export interface ItemFilter {
  readonly kind: ItemKind | 'all';
  readonly state: ItemState | 'in-use' | 'all';
  readonly search: string;
}

const told: Readonly<Record<ItemState, (label: string) => string>> = {
  owned: (label) => `${label} is owned.`,
  considering: (label) => `Considering ${label}.`,
  retired: (label) => `Retired ${label}.`,
};

export class InventoryState {
  readonly rows = new Rows<Item>();
  filter = $state.raw<ItemFilter>({ kind: 'all', state: 'in-use', search: '' });
  readonly #calls: Calls;
  readonly #changed: () => void;
  readonly #turns = new Turns();

  constructor(calls: Calls, changed: () => void) {
    this.#calls = calls;
    this.#changed = changed;
  }

  async load(): Promise<void> {
    const outcome = await this.#calls.ask('items.list', {});
    if (outcome.ok) this.rows.fill(outcome.value);
  }

  async add(item: ItemDraft): Promise<Outcome<Item>> {
    const outcome = await this.#calls.submit('items.save', { item });
    if (outcome.ok) {
      this.#take([outcome.value]);
      this.#calls.notices.tell(`Added ${outcome.value.label}.`);
    }
    return outcome;
  }

  /** The state stays as it is now: an editor that was opened earlier may hold an older one. */
  async save(id: string, draft: ItemDraft): Promise<Outcome<Item>> {
    const turn = this.#turns.take(id);
    const state = this.rows.find(id)?.state ?? draft.state;
    const outcome = await this.#calls.submit('items.save', { id, item: { ...draft, state } });
    if (outcome.ok && turn.settle()) this.#take([outcome.value]);
    return outcome;
  }

  /** Moves an item between owned, considering and retired, with a notice that takes it back. */
  async move(id: string, state: ItemState): Promise<void> {
    const before = this.rows.find(id)?.state;
    const item = await this.#setState(id, state);
    if (item === null || before === undefined) return;
    this.#calls.notices.tell(told[state](item.label), () => void this.#setState(id, before));
  }

  readCsv(text: string): Promise<Outcome<CsvReading>> {
    return this.#calls.ask('items.readCsv', { text, store: false });
  }

  async storeCsv(text: string): Promise<Outcome<CsvReading>> {
    const outcome = await this.#calls.ask('items.readCsv', { text, store: true });
    if (outcome.ok && outcome.value.problems.length === 0) {
      this.#take(outcome.value.added);
      this.#calls.notices.tell(`Added ${outcome.value.added.length} items from the file.`);
    }
    return outcome;
  }

  async #setState(id: string, state: ItemState): Promise<Item | null> {
    const turn = this.#turns.take(id);
    const outcome = await this.#calls.ask('items.setState', { id, state });
    if (!outcome.ok) return null;
    if (turn.settle()) this.#take([outcome.value]);
    return outcome.value;
  }

  #take(items: readonly Item[]): void {
    for (const item of items) this.rows.put(item);
    this.#changed();
  }
}
