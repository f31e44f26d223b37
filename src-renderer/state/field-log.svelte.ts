import { untrack } from 'svelte';
import type { Comparison } from '../../shared-types/comparison.ts';
import type { FieldLog, ItemEstimate } from '../../shared-types/field-log.ts';
import type { Item } from '../../shared-types/item.ts';
import type { Outcome } from '../../shared-types/outcome.ts';
import type { Reading, ReadingDraft } from '../../shared-types/reading.ts';
import type { Calls } from './calls.ts';
import { alike } from './carry-over.ts';
import type { EditHistory, EditStep, Place } from './edit-history.svelte.ts';
import { Form } from './form.svelte.ts';
import { KeptForms } from './kept-forms.ts';
import { marginChanges } from './margin-changes.ts';
import { NewForm } from './new-form.svelte.ts';
import { addressOf } from './route.svelte.ts';
import { Turns } from './turns.ts';

/** What the log needs of the rest of the app. */
export interface FieldLogSources {
  readonly items: () => readonly Item[];
  /** Shows an item that has a new value from its readings, as a step to be taken back; null when it says the same. */
  readonly adoptItem: (item: Item) => EditStep | null;
  readonly comparison: () => { readonly current: Comparison | null; readonly updating: boolean };
}

/** An item with values that the next comparison will have used first, and what they are. */
interface Used {
  readonly item: Item;
  readonly words: string;
}

/** Values stored one after the other are told together, against the last comparison that used none of them. */
interface Awaited {
  readonly used: readonly Used[];
  readonly before: Comparison;
}

function alsoUsed(used: readonly Used[], { item, words }: Used): readonly Used[] {
  const earlier = used.find((each) => each.item.id === item.id);
  const all = earlier === undefined ? `${item.label}, ${words}` : `${earlier.words}; ${words}`;
  return [...used.filter((each) => each !== earlier), { item, words: all }];
}

const logPlace: Place = { words: 'See the field log', address: addressOf('field-log') };

/** The readings of the rider, and what follows from them. */
export class FieldLogState {
  /** null until it was read. */
  log = $state.raw<FieldLog | null>(null);
  /** Which item's readings are listed; null for all. Kept while other screens are open. */
  itemId = $state.raw<string | null>(null);
  /** Of which item the rider noted something last. */
  lastItemId = $state.raw<string | null>(null);
  /** Which reading is being changed. */
  editedId = $state.raw<string | null>(null);
  readonly newReading = new NewForm<ReadingDraft>(
    (draft) => new Form(draft, { root: 'reading', live: false, store: (given) => this.add(given) }),
  );
  readonly forms = new KeptForms<Reading>(
    (id, draft) => new Form(draft, { root: 'reading', live: false, store: (given) => this.save(id, given) }),
  );
  /** What the values stored last changed, in the comparison that used them first. */
  lastChange = $state.raw<string | null>(null);
  #awaited = $state.raw<Awaited | null>(null);
  readonly #calls: Calls;
  readonly #history: EditHistory;
  readonly #sources: FieldLogSources;
  readonly #turns = new Turns();

  constructor(calls: Calls, history: EditHistory, sources: FieldLogSources) {
    this.#calls = calls;
    this.#history = history;
    this.#sources = sources;
  }

  get readings(): readonly Reading[] {
    return this.log?.readings ?? [];
  }

  get edited(): Reading | undefined {
    return this.editedId === null ? undefined : this.find(this.editedId);
  }

  /** There is something of today to answer from. */
  get hasToday(): boolean {
    return this.readings.some(({ on }) => on === this.log?.today);
  }

  get unsaved(): boolean {
    return this.newReading.unsaved || this.forms.unsavedIds.some((id) => this.find(id) !== undefined);
  }

  /** Reads the log anew when items change, for labels, lights and stored values tell in its estimates; for an effect. */
  followItems(): void {
    this.#sources.items();
    untrack(() => void this.load());
  }

  /** @returns whether it could be read */
  async load(): Promise<boolean> {
    const turn = this.#turns.take();
    const outcome = await this.#calls.ask('readings.log', {});
    if (outcome.ok && turn.isNewest()) this.log = outcome.value;
    return outcome.ok;
  }

  add(draft: ReadingDraft): Promise<Outcome<Reading>> {
    return this.#history.during(async () => {
      const outcome = await this.#calls.submit('readings.save', { reading: draft });
      if (!outcome.ok) return outcome;
      this.lastItemId = draft.itemId;
      const reading = outcome.value;
      this.#history.record({
        ...this.#words('Added', reading),
        undo: () => this.#drop(reading.id),
        redo: () => this.#put(reading),
      });
      await this.load();
      return outcome;
    });
  }

  save(id: string, draft: ReadingDraft): Promise<Outcome<Reading>> {
    return this.#history.during(async () => {
      const before = this.find(id);
      const outcome = await this.#calls.submit('readings.save', { id, reading: draft });
      if (!outcome.ok || before === undefined) return outcome;
      const after = outcome.value;
      this.#history.record({
        ...this.#words('Changed', after),
        undo: () => this.#put(before),
        redo: () => this.#put(after),
      });
      await this.load();
      return outcome;
    });
  }

  remove(reading: Reading): Promise<void> {
    return this.#history.during(async () => {
      const outcome = await this.#calls.ask('readings.remove', { id: reading.id });
      if (!outcome.ok) return;
      const step = this.#history.record({
        ...this.#words('Removed', reading),
        undo: () => this.#put(outcome.value),
        redo: () => this.#drop(reading.id),
      });
      this.#calls.notices.tell(`${step.words}.`, () => void this.#history.undo(step), {
        subject: step.subject,
      });
      await this.load();
    });
  }

  /** Stores an estimate as the value of its item; the comparison that follows will say what it changed. */
  store({ itemId, measure }: ItemEstimate): Promise<void> {
    return this.#history.during(async () => {
      const outcome = await this.#calls.ask('readings.store', { itemId, measure });
      if (!outcome.ok) return;
      const { item, words } = outcome.value;
      const before = this.#sources.comparison().current;
      const step = this.#sources.adoptItem(item);
      const undo = step === null ? null : () => void this.#history.undo(step);
      this.#calls.notices.tell(
        `Stored for ${item.label}: ${words}.`,
        undo,
        step === null ? {} : { subject: step.subject },
      );
      if (before !== null) this.#await({ item, words }, before);
      await this.load();
    });
  }

  /** Says once what stored values changed, when the comparison that used them is there; for an effect. */
  followComparison(): void {
    const { current, updating } = this.#sources.comparison();
    const awaited = this.#awaited;
    if (awaited === null || updating || current === null || current === awaited.before) return;
    this.#awaited = null;
    const used = awaited.used.filter(({ item }) => this.#isStillSo(item));
    if (used.length === 0) return;
    const text = `The comparison used ${used.map(({ words }) => words).join('; and ')}. ${marginChanges(awaited.before, current)}`;
    this.lastChange = text;
    this.#calls.notices.tell(text, null, {
      link: { words: 'See the trade-offs', address: addressOf('trade-offs') },
    });
  }

  #await(used: Used, before: Comparison): void {
    const awaited = this.#awaited ?? { used: [], before };
    this.#awaited = { ...awaited, used: alsoUsed(awaited.used, used) };
  }

  /** A value may have been taken back before any comparison used it. */
  #isStillSo(item: Item): boolean {
    return alike(
      this.#sources.items().find(({ id }) => id === item.id),
      item,
    );
  }

  find(id: string): Reading | undefined {
    return this.readings.find((reading) => reading.id === id);
  }

  #words(verb: string, { id, itemId }: Reading): Omit<EditStep, 'undo' | 'redo'> {
    const label = this.#sources.items().find(({ id: each }) => each === itemId)?.label ?? 'an item';
    return {
      words: `${verb} a reading of ${label}`,
      subject: `readings/${id}`,
      undone: logPlace,
      redone: logPlace,
      field: null,
    };
  }

  async #put({ id, ...draft }: Reading): Promise<Outcome<unknown>> {
    const outcome = await this.#calls.attempt('readings.save', { id, reading: draft });
    if (!outcome.ok) return outcome;
    await this.load();
    this.forms.adopt(outcome.value);
    return outcome;
  }

  async #drop(id: string): Promise<Outcome<unknown>> {
    const outcome = await this.#calls.attempt('readings.remove', { id });
    if (outcome.ok) await this.load();
    return outcome;
  }
}
