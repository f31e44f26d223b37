import type { Outcome } from '../../shared-types/outcome.ts';
import type { Calls } from './calls.ts';
import { draftOf, type DraftOf } from './draft-of.ts';
import type { EditHistory } from './edit-history.svelte.ts';
import type { Form } from './form.svelte.ts';
import { KeptForms } from './kept-forms.ts';
import {
  additionsStep,
  additionStep,
  changeStep,
  oneByOne,
  removalStep,
  type LabelledRow,
  type RowStore,
} from './row-steps.ts';
import { Rows } from './rows.svelte.ts';
import { Turns } from './turns.ts';

/**
 * How rows of one kind are listed, stored and removed. `ask` tells of a failure by itself, `submit` leaves it to a form,
 * `attempt` to the caller.
 */
export interface RowCalls<Row extends LabelledRow> {
  readonly list: RowStore<Row>['list'];
  all(): Promise<Outcome<readonly Row[]>>;
  /** Without an id it adds a row, with one it replaces that row or puts it back. */
  save(how: 'ask' | 'submit' | 'attempt', draft: DraftOf<Row>, id?: string): Promise<Outcome<Row>>;
  remove(how: 'ask' | 'attempt', id: string): Promise<Outcome<Row>>;
  /** A form that stores its draft by `save`. */
  form(draft: DraftOf<Row>, store: (draft: DraftOf<Row>) => Promise<Outcome<Row>>): Form<DraftOf<Row>>;
}

/** Rows a rider adds, edits and removes, each change a step that can be taken back. */
export class RemovableRows<Row extends LabelledRow> {
  readonly rows = new Rows<Row>();
  readonly forms: KeptForms<Row>;
  readonly #calls: Calls;
  protected readonly changed: () => void;
  readonly #history: EditHistory;
  readonly #through: RowCalls<Row>;
  readonly #store: RowStore<Row>;
  readonly #turns = new Turns();

  constructor(calls: Calls, changed: () => void, history: EditHistory, through: RowCalls<Row>) {
    this.#calls = calls;
    this.changed = changed;
    this.#history = history;
    this.#through = through;
    this.forms = new KeptForms((id, draft) => through.form(draft, (given) => this.save(id, given)));
    this.#store = {
      list: through.list,
      find: (id) => this.rows.find(id),
      put: (rows, place) => oneByOne(rows, (row) => this.#putBack(row, place)),
      remove: (ids) => oneByOne(ids, (id) => this.#drop('attempt', id)),
    };
  }

  /** A form holds what is not stored. One of a removed row waits for the row to be put back. */
  get unsaved(): boolean {
    return this.forms.unsavedIds.some((id) => this.rows.find(id) !== undefined);
  }

  /** @returns whether they could be read */
  async load(): Promise<boolean> {
    const outcome = await this.#through.all();
    if (outcome.ok) this.rows.fill(outcome.value);
    return outcome.ok;
  }

  add(draft: DraftOf<Row>): Promise<Row | null> {
    return this.#history.during(async () => {
      const outcome = await this.#through.save('ask', draft);
      if (!outcome.ok) return null;
      this.#history.record(additionStep(this.#store, outcome.value));
      return this.#take(outcome.value);
    });
  }

  /** Takes rows that the workbench made by itself, as one step. */
  async takeMade(ids: readonly string[], words: string): Promise<void> {
    await this.load();
    const made = this.rows.all.filter(({ id }) => ids.includes(id));
    if (made.length > 0) this.#history.record(additionsStep(this.#store, made, words));
  }

  save(id: string, draft: DraftOf<Row>): Promise<Outcome<Row>> {
    return this.#history.during(async () => {
      const turn = this.#turns.take(id);
      const outcome = await this.#through.save('submit', draft, id);
      if (outcome.ok && turn.settle()) this.#takeChange(outcome.value);
      return outcome;
    });
  }

  remove(id: string): Promise<void> {
    return this.#history.during(async () => {
      const place = this.rows.all.findIndex((row) => row.id === id);
      const outcome = await this.#drop('ask', id);
      if (!outcome.ok) return;
      const step = this.#history.record(removalStep(this.#store, outcome.value, place));
      this.#calls.notices.tell(`Removed ${outcome.value.label}.`, () => void this.#history.undo(step), {
        subject: step.subject,
      });
    });
  }

  async #drop(how: 'ask' | 'attempt', id: string): Promise<Outcome<Row>> {
    const outcome = await this.#through.remove(how, id);
    if (!outcome.ok) return outcome;
    this.rows.drop(id);
    this.changed();
    return outcome;
  }

  async #putBack(row: Row, place?: number): Promise<Outcome<Row>> {
    const outcome = await this.#through.save('attempt', draftOf(row), row.id);
    if (!outcome.ok) return outcome;
    this.#take(outcome.value, place);
    this.forms.adopt(outcome.value);
    return outcome;
  }

  #takeChange(row: Row): void {
    const before = this.rows.find(row.id);
    const step = before === undefined ? null : changeStep(this.#store, before, row);
    if (step !== null) this.#history.record(step);
    this.#take(row);
  }

  #take(row: Row, place?: number): Row {
    this.rows.put(row, place);
    this.changed();
    return row;
  }
}
