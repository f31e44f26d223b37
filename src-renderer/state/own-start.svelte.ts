import type { FieldError, Outcome } from '../../shared-types/outcome.ts';
import type { OwnStart } from '../../shared-types/own-start.ts';
import { Form } from './form.svelte.ts';

/** The draft of what a rider begins with, kept while other screens are open. */
export class OwnStartState {
  /** How far along the way the rider is, from 0. */
  step = $state(0);
  #form = $state.raw<Form<OwnStart> | null>(null);
  readonly #store: (draft: OwnStart) => Promise<Outcome<unknown>>;

  constructor(store: (draft: OwnStart) => Promise<Outcome<unknown>>) {
    this.#store = store;
  }

  /** The form under way, or a new one from what `begin` gives. */
  form(begin: () => OwnStart): Form<OwnStart> {
    return this.#form ?? this.begin(this.step, begin());
  }

  /** A form that begins with this draft, with the rider at this step of the way. */
  begin(step: number, draft: OwnStart): Form<OwnStart> {
    this.step = step;
    this.#form = new Form(draft, { root: 'own', live: false, store: this.#store });
    return this.#form;
  }

  /** null where the way was not begun. */
  get begun(): Form<OwnStart> | null {
    return this.#form;
  }

  get unsaved(): boolean {
    return this.#form?.unsaved === true;
  }

  /** Goes on to a step, unless what was asked before it is not right yet. */
  goTo(step: number, faults: readonly FieldError[]): boolean {
    if (this.#form !== null) this.#form.errors = faults;
    if (faults.length > 0) return false;
    this.step = step;
    return true;
  }

  /** The way has been gone: the next begins anew. */
  done(): void {
    this.#form = null;
    this.step = 0;
  }
}
