import { SvelteMap } from 'svelte/reactivity';
import { draftOf, type DraftOf } from './draft-of.ts';
import type { Form } from './form.svelte.ts';

/** One form for each row, for as long as the app runs: what is refused outlasts a look at another screen. */
export class KeptForms<Row extends { readonly id: string }> {
  readonly #begin: (id: string, draft: DraftOf<Row>) => Form<DraftOf<Row>>;
  readonly #forms = new SvelteMap<string, Form<DraftOf<Row>>>();

  constructor(begin: (id: string, draft: DraftOf<Row>) => Form<DraftOf<Row>>) {
    this.#begin = begin;
  }

  /** The form of this row, with what was stored of it since it was last looked at. */
  of(row: Row): Form<DraftOf<Row>> {
    const kept = this.#forms.get(row.id);
    kept?.adopt(draftOf(row));
    const form = kept ?? this.#begin(row.id, draftOf(row));
    if (kept === undefined) this.#forms.set(row.id, form);
    return form;
  }

  /** Shows in its form what was stored of a row elsewhere. */
  adopt(row: Row): void {
    this.#forms.get(row.id)?.adopt(draftOf(row));
  }

  /** Every form that was begun, by the id of its row. */
  get begun(): readonly (readonly [id: string, form: Form<DraftOf<Row>>])[] {
    return [...this.#forms];
  }

  /** Ids of the rows, gone ones too, whose forms hold what is not stored. */
  get unsavedIds(): readonly string[] {
    return this.begun.filter(([, form]) => form.unsaved).map(([id]) => id);
  }
}
