import type { Form } from './form.svelte.ts';

/** The form of something yet to be added, kept while other screens are open until it is added or given up. */
export class NewForm<Draft> {
  #form = $state.raw<Form<Draft> | null>(null);
  readonly #begin: (draft: Draft) => Form<Draft>;

  constructor(begin: (draft: Draft) => Form<Draft>) {
    this.#begin = begin;
  }

  /** The form the rider has begun to fill, or one that begins with this. */
  of(draft: Draft): Form<Draft> {
    const form = this.#form?.unsaved === true ? this.#form : this.#begin(draft);
    this.#form = form;
    return form;
  }

  done(): void {
    this.#form = null;
  }

  /** null where none was begun. */
  get begun(): Form<Draft> | null {
    return this.#form;
  }

  get unsaved(): boolean {
    return this.#form?.unsaved === true;
  }
}
