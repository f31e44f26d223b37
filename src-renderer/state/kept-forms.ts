import { draftOf, type DraftOf } from './draft-of.ts';
import type { Form } from './form.svelte.ts';

/** One form for each row, for as long as the app runs: what is refused outlasts a look at another screen. */
export class KeptForms<Row extends { readonly id: string }> {
  readonly #begin: (id: string, draft: DraftOf<Row>) => Form<DraftOf<Row>>;
  readonly #forms = new Map<string, Form<DraftOf<Row>>>();

  constructor(begin: (id: string, draft: DraftOf<Row>) => Form<DraftOf<Row>>) {
    this.#begin = begin;
  }

  of(row: Row): Form<DraftOf<Row>> {
    const form = this.#forms.get(row.id) ?? this.#begin(row.id, draftOf(row));
    this.#forms.set(row.id, form);
    return form;
  }
}
