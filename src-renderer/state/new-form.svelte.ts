import type { Form } from './form.svelte.ts';

/** The form of something yet to be added, kept while other screens are open until it is added or given up. */
export class NewForm<Draft> {
  #form = $state.raw<Form<Draft> | null>(null);

  /** The form the rider has begun to fill, or a new one. */
  of(begin: () => Form<Draft>): Form<Draft> {
    const form = this.#form?.unsaved === true ? this.#form : begin();
    this.#form = form;
    return form;
  }

  done(): void {
    this.#form = null;
  }

  get unsaved(): boolean {
    return this.#form?.unsaved === true;
  }
}
