import { z } from 'zod';
import { wordsLocale } from '../../shared-types/figures.ts';
import { keepTypedText, typedTexts } from '../parts/fields/typed-text.ts';
import type { DraftForm, DraftKind, DraftKinds } from './draft-kinds.ts';
import { isBuiltAs } from './draft-shape.ts';
import type { DraftStore } from './draft-store.ts';
import type { NoticesState } from './notices.svelte.ts';
import { addressOf, type Screen } from './route.svelte.ts';
import { screenNames } from './screen-names.ts';

/** A draft as it is kept, with what the rider typed into its fields of numbers, word for word. */
const keptDraft = z.strictObject({
  draft: z.unknown(),
  stored: z.unknown(),
  errors: z.array(z.strictObject({ path: z.string(), allowed: z.string(), got: z.string() })),
  texts: z.array(
    z.tuple([z.string(), z.strictObject({ text: z.string(), value: z.union([z.number(), z.nan()]) })]),
  ),
});
type KeptDraft = z.output<typeof keptDraft>;

/** What became of the drafts that were kept. */
export interface PutBack {
  /** Where some are back, in the order they were found. */
  readonly screens: readonly Screen[];
  /** How many were of what is gone, or no longer fit their form. */
  readonly dropped: number;
}

/** Keeps what is not stored beside the page, and puts it back into its forms when the page was loaded anew. */
export class UnstoredDrafts {
  readonly #store: DraftStore;
  readonly #kinds: ReadonlyMap<string, DraftKind<unknown>>;

  constructor(store: DraftStore, kinds: DraftKinds) {
    this.#store = store;
    this.#kinds = new Map(Object.entries(kinds));
  }

  /** Keeps what is not stored now, in place of what was not stored before. */
  keep(catalogue: string): void {
    const drafts = [...this.#kinds].flatMap(([name, kind]) =>
      kind.begun().flatMap(([id, form]) => {
        const kept = keptOf(form);
        return kept === null ? [] : [[`${name}/${id}`, kept] as const];
      }),
    );
    this.#store.keep(catalogue, Object.fromEntries(drafts));
  }

  /** Reads what the drafts are of, where the start does not; false where it could not be read. */
  async load(catalogue: string): Promise<boolean> {
    const names = new Set(Object.keys(this.#store.read(catalogue)).map((key) => partsOf(key).name));
    const loads = await Promise.all(
      [...names].map(async (name) => (await this.#kinds.get(name)?.load?.()) ?? true),
    );
    return loads.every((each) => each);
  }

  /** Puts every draft back into its form, as far as that is still there. */
  putBack(catalogue: string): PutBack {
    const screens = new Set<Screen>();
    let dropped = 0;
    for (const [key, value] of Object.entries(this.#store.read(catalogue))) {
      const { name, id } = partsOf(key);
      const kind = this.#kinds.get(name);
      const form = kind === undefined ? null : formWith(kind, id, value);
      if (kind === undefined || form === null) dropped += 1;
      else if (form.unstored !== null) screens.add(kind.screen);
    }
    return { screens: [...screens], dropped };
  }
}

/** `items/demo-phone`: the kind of draft, and the id of its form, which may hold a slash. */
function partsOf(key: string): { readonly name: string; readonly id: string } {
  const [name = '', ...id] = key.split('/');
  return { name, id: id.join('/') };
}

/** Says once that unstored entries are back, and that some could not be. */
export function tellPutBack(notices: NoticesState, { screens, dropped }: PutBack): void {
  const [first] = screens;
  if (first !== undefined) {
    const names = new Intl.ListFormat(wordsLocale).format(screens.map((screen) => screenNames[screen]));
    const link = { words: `See ${screenNames[first]}`, address: addressOf(first) };
    notices.tell(`What was not stored yet is back, in ${names}.`, null, { link });
  }
  if (dropped > 0)
    notices.fail(
      dropped === 1
        ? 'An entry that was not stored could not be put back: what it is of is gone, or has other fields now.'
        : `${dropped} entries that were not stored could not be put back: what they are of is gone, or has other fields now.`,
    );
}

function keptOf(form: DraftForm<unknown>): KeptDraft | null {
  const { unstored } = form;
  if (unstored === null) return null;
  const { draft, stored, errors } = unstored;
  return { draft, stored, errors: [...errors], texts: [...typedTexts(form)] };
}

/** The form with the kept draft in it; null where that has no place any more. */
function formWith(kind: DraftKind<unknown>, id: string, value: unknown): DraftForm<unknown> | null {
  const { data: kept } = keptDraft.safeParse(value);
  if (kept === undefined || ![kept.draft, kept.stored].every((each) => isBuiltAs(kind.schema, each)))
    return null;
  const form = kind.formOf(id, kept.stored);
  if (form === null) return null;
  for (const [path, typed] of kept.texts) keepTypedText(form, path, typed);
  form.putBack(kept);
  return form;
}
