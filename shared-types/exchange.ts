import { z } from 'zod';
import type { CsvLine } from './contract.ts';
import { count, id } from './field.ts';
import { keptEstimate } from './field-log.ts';
import type { FieldError } from './outcome.ts';

/** What a catalogue file is told by, and the newest form of it that is written and read. */
export const catalogueFormat = 'chargewright-catalogue';
export const catalogueFormatVersion = 1;

/** The lists of a catalogue file, in the order in which they refer to what stands before them. */
export const exchangeLists = ['items', 'tours', 'scenarios', 'readings', 'estimates'] as const;
export type ExchangeList = (typeof exchangeLists)[number];

/** More than the largest file has room for, all lists together; what is longer is something else. */
export const mostEntries = 200_000;

/** Where an entry stands in the file: a refused one may have no id, or one that stands there twice. */
const entryPlace = z.strictObject({
  list: z.enum(exchangeLists, { error: `one of: ${exchangeLists.join(', ')}` }),
  place: count({ label: 'Place in the list', min: 0, max: mostEntries - 1 }),
});

/** The settings stand alone, at place 0. */
export interface EntryPlace {
  readonly list: ExchangeList | 'settings';
  readonly place: number;
}

/** What becomes of an entry: it is put beside what is there, in place of it, left as it is there, or not taken. */
export type Fate = 'new' | 'changed' | 'same' | 'refused';

/** A field of an entry as it is here and as the file has it; null where there is none. Of lists of other length the length. */
export interface FieldChange {
  readonly path: string;
  readonly before: string | number | boolean | null;
  readonly after: string | number | boolean | null;
}

/** One entry of a catalogue file, judged. */
export interface ExchangeEntry extends EntryPlace {
  /** In words: `Bank`, `Tour`, `Reading`. */
  readonly kind: string;
  readonly label: string;
  readonly fate: Fate;
  /** The first fields that differ, of a changed one. */
  readonly changes: readonly FieldChange[];
  /** The first reasons, of a refused one. */
  readonly reasons: readonly FieldError[];
  /** How many changes or reasons there are beyond those listed. */
  readonly more: number;
  /** Of a new item: where something of its kind and label is already under another id. */
  readonly twin: CsvLine['twin'];
  /** New entries of the file that it refers to: without them it cannot be taken. */
  readonly needs: readonly EntryPlace[];
}

/** What a catalogue file holds, and what taking it in would do. */
export interface ExchangePreview {
  /** ISO date and version of the program, where the file says. */
  readonly madeOn: string | null;
  readonly program: string | null;
  /** In the order of the lists; the settings, if any, are the last. */
  readonly entries: readonly ExchangeEntry[];
}

/** What a rider takes of a file. */
export const exchangeChoice = z.strictObject({
  leaveOut: z.array(entryPlace).max(mostEntries),
  passOverRefused: z.boolean(),
  settings: z.boolean(),
});
export type ExchangeChoice = z.infer<typeof exchangeChoice>;

const ids = z.array(id).max(mostEntries);

/** What a taking put beside what was there, by the names that it goes by in the catalogue. */
export const addedEntries = z.strictObject({
  items: ids,
  tours: ids,
  scenarios: ids,
  readings: ids,
  estimates: z.array(keptEstimate.pick({ itemId: true, measure: true })).max(mostEntries),
});
export type AddedEntries = z.infer<typeof addedEntries>;

/** What stood there before a taking: it takes the taking back. */
export interface FormerState {
  /** A catalogue file of what was changed, as it was. */
  readonly text: string;
  readonly added: AddedEntries;
}

export interface ExchangeTaking {
  readonly added: number;
  readonly changed: number;
  /** What was passed over, or what kept everything from being stored. */
  readonly refused: readonly ExchangeEntry[];
  /** null where nothing was stored. */
  readonly former: FormerState | null;
}
