import type { Outcome } from '../../shared-types/outcome.ts';
import type { Calls } from './calls.ts';
import { Rows } from './rows.svelte.ts';
import { Turns } from './turns.ts';

interface Labelled {
  readonly id: string;
  readonly label: string;
}

/** How rows of one kind are listed, stored and removed. `ask` tells of a failure by itself, `submit` leaves it to a form. */
export interface RowCalls<Row extends Labelled, Draft> {
  list(): Promise<Outcome<readonly Row[]>>;
  /** Without an id it adds a row, with one it replaces that row or puts it back. */
  save(how: 'ask' | 'submit', draft: Draft, id?: string): Promise<Outcome<Row>>;
  remove(id: string): Promise<Outcome<Row>>;
}

/** Rows a rider adds, edits and removes, with a notice that puts a removed one back. */
export class RemovableRows<Row extends Labelled & Draft, Draft extends object> {
  readonly rows = new Rows<Row>();
  protected readonly calls: Calls;
  protected readonly changed: () => void;
  readonly #through: RowCalls<Row, Draft>;
  readonly #turns = new Turns();

  constructor(calls: Calls, changed: () => void, through: RowCalls<Row, Draft>) {
    this.calls = calls;
    this.changed = changed;
    this.#through = through;
  }

  async load(): Promise<void> {
    const outcome = await this.#through.list();
    if (outcome.ok) this.rows.fill(outcome.value);
  }

  async add(draft: Draft): Promise<Row | null> {
    const outcome = await this.#through.save('ask', draft);
    return outcome.ok ? this.#take(outcome.value) : null;
  }

  async save(id: string, draft: Draft): Promise<Outcome<Row>> {
    const turn = this.#turns.take(id);
    const outcome = await this.#through.save('submit', draft, id);
    if (outcome.ok && turn.settle()) this.#take(outcome.value);
    return outcome;
  }

  async remove(id: string): Promise<void> {
    const outcome = await this.#through.remove(id);
    if (!outcome.ok) return;
    const place = this.rows.drop(id);
    this.changed();
    this.calls.notices.tell(
      `Removed ${outcome.value.label}.`,
      () => void this.#putBack(outcome.value, place),
    );
  }

  async #putBack({ id, ...draft }: Row, place: number): Promise<void> {
    const outcome = await this.#through.save('ask', draft as unknown as Draft, id);
    if (outcome.ok) this.#take(outcome.value, place);
  }

  #take(row: Row, place?: number): Row {
    this.rows.put(row, place);
    this.changed();
    return row;
  }
}
