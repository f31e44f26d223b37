import type { EntryPlace } from '../../../shared-types/exchange.ts';
import type { FieldError } from '../../../shared-types/outcome.ts';
import type { Judged } from './judge-list.ts';
import { nameOf, type ReadEntry } from './read-entries.ts';

/** A field that names an entry of another list. */
export interface Reference {
  readonly path: string;
  readonly id: string;
}

/** Where the references to one list lead, once what is taken of a file stands beside what is there. */
export class References<Row extends { readonly id: string }> {
  /** With its article: `an item`. */
  readonly #what: string;
  readonly #rows: ReadonlyMap<string, Row>;
  readonly #fresh: ReadonlyMap<string, EntryPlace>;
  /** Why an entry of the file cannot be referred to. */
  readonly #whyNot: ReadonlyMap<string, string>;

  constructor(
    what: string,
    stored: readonly Row[],
    read: readonly ReadEntry<Row>[],
    judged: readonly Judged<Row>[],
  ) {
    const taken = judged.filter(({ isTaken }) => isTaken);
    const rows = taken.flatMap(({ row }) => row ?? []);
    this.#what = what;
    this.#rows = new Map([...stored, ...rows].map((row) => [row.id, row]));
    this.#fresh = new Map(
      judged.flatMap(({ entry, row }) => (entry.fate === 'new' && row !== null ? [[row.id, entry]] : [])),
    );
    this.#whyNot = new Map(
      judged.flatMap(({ entry, isTaken }, index) => {
        const { id } = nameOf(read[index]?.raw);
        if (typeof id !== 'string' || isTaken) return [];
        return [[id, entry.fate === 'refused' ? 'which is refused' : 'which is left out']];
      }),
    );
  }

  find(id: string): Row | undefined {
    return this.#rows.get(id);
  }

  faults(references: readonly Reference[]): readonly FieldError[] {
    return references.flatMap(({ path, id }) => {
      if (this.#rows.has(id)) return [];
      const why = this.#whyNot.get(id);
      const got = why === undefined ? JSON.stringify(id) : `${JSON.stringify(id)}, ${why}`;
      return [{ path, allowed: `the id of ${this.#what} of the catalogue or of this file`, got }];
    });
  }

  needs(references: readonly Reference[]): readonly EntryPlace[] {
    const found = references.flatMap(({ id }) => this.#fresh.get(id) ?? []);
    return found.map(({ list, place }) => ({ list, place }));
  }
}
