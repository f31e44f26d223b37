import { z } from 'zod';
import type { ExchangeList } from '../../../shared-types/exchange.ts';
import { id as idField } from '../../../shared-types/field.ts';
import { keptEstimate, type KeptEstimate } from '../../../shared-types/field-log.ts';
import { formatNumber, wordsLocale } from '../../../shared-types/figures.ts';
import { itemDraft, type Item } from '../../../shared-types/item.ts';
import { badInput, type FieldError } from '../../../shared-types/outcome.ts';
import { readingDraft, type Reading } from '../../../shared-types/reading.ts';
import { scenarioDraft, type Scenario } from '../../../shared-types/scenario.ts';
import { tourDraft, type Tour } from '../../../shared-types/tour.ts';
import { estimateKey } from './content.ts';

/** An entry that its schema was asked about. */
export interface ReadEntry<Row> {
  readonly place: number;
  /** What it goes by; null where that is not to be read. */
  readonly key: string | null;
  /** The row it makes, or null with the reasons. */
  readonly row: Row | null;
  readonly reasons: readonly FieldError[];
  /** As it stands in the file. */
  readonly raw: unknown;
}

interface RowOfList {
  readonly items: Item;
  readonly tours: Tour;
  readonly scenarios: Scenario;
  readonly readings: Reading;
  readonly estimates: KeptEstimate;
}

/** The figures of an estimate in their order, which the table holds them to. */
const orderedEstimate = keptEstimate.refine(({ low, value, high }) => low <= value && value <= high, {
  path: ['value'],
  error: 'a value from its low to its high end',
});

type Reader<Row> = (raw: unknown) => Pick<ReadEntry<Row>, 'row' | 'reasons'>;

const readers: { readonly [List in ExchangeList]: Reader<RowOfList[List]> } = {
  items: named(itemDraft, (draft, id): Item => ({ ...draft, id })),
  tours: named(tourDraft, (draft, id): Tour => ({ ...draft, id })),
  scenarios: named(scenarioDraft, (draft, id): Scenario => ({ ...draft, id })),
  readings: named(readingDraft, (draft, id): Reading => ({ ...draft, id })),
  estimates: (raw) => rowOrReasons(orderedEstimate, raw),
};

/** The entries of one list; of those that go by the same name none can be told from the other, and all are refused. */
export function readEntries<List extends ExchangeList>(
  list: List,
  raws: readonly unknown[],
): readonly ReadEntry<RowOfList[List]>[] {
  const read = patientReader(list);
  const entries = raws.map((raw, place) => ({ place, key: keyOf(list, raw), ...read(raw), raw }));
  const times = new Map<string | null, number>();
  for (const { key } of entries) times.set(key, (times.get(key) ?? 0) + 1);
  return entries.map((entry) =>
    entry.key !== null && (times.get(entry.key) ?? 0) > 1
      ? { ...entry, row: null, reasons: [twiceThere(list, entry.key), ...entry.reasons] }
      : entry,
  );
}

/** After so many refused entries a list is something else, and finding out why for the rest takes long. */
const mostRefused = 10_000;

/** Reads the entries of one list until too many of them are refused. */
function patientReader<List extends ExchangeList>(list: List): Reader<RowOfList[List]> {
  let refused = 0;
  return (raw) => {
    if (refused >= mostRefused) return { row: null, reasons: [notLookedAt] };
    const read = readers[list](raw);
    if (read.row === null) refused += 1;
    return read;
  };
}

const notLookedAt: FieldError = {
  path: '',
  allowed: `less than ${formatNumber(mostRefused, { locale: wordsLocale })} refused entries before it`,
  got: 'not looked at',
};

function twiceThere(list: ExchangeList, key: string): FieldError {
  if (list === 'estimates')
    return {
      path: 'measure',
      allowed: 'one stored value of an item and measure',
      got: 'two or more of them',
    };
  return { path: 'id', allowed: `an id that stands once among the ${list}`, got: JSON.stringify(key) };
}

/** What any entry may have, to be named by. */
interface Name {
  readonly id?: unknown;
  readonly kind?: unknown;
  readonly label?: unknown;
  readonly itemId?: unknown;
  readonly on?: unknown;
}

export function nameOf(raw: unknown): Name {
  return typeof raw === 'object' && raw !== null ? raw : {};
}

function keyOf(list: ExchangeList, raw: unknown): string | null {
  if (list === 'estimates') {
    const estimate = keptEstimate.safeParse(raw);
    return estimate.success ? estimateKey(estimate.data) : null;
  }
  const { id } = nameOf(raw);
  return typeof id === 'string' ? (idField.safeParse(id).data ?? null) : null;
}

/** Reads an entry whose draft has its id beside its fields. */
function named<Draft, Row>(schema: z.ZodType<Draft>, rowOf: (draft: Draft, id: string) => Row): Reader<Row> {
  const shape = z.strictObject({ id: idField, draft: schema });
  return (raw) => {
    const whole = group.safeParse(raw);
    if (!whole.success) return { row: null, reasons: badInput(whole.error, raw).error.fields };
    const { id, ...draft } = whole.data;
    const { row, reasons } = rowOrReasons(shape, { id, draft });
    return row === null
      ? { row, reasons: reasons.map(withoutDraft) }
      : { row: rowOf(row.draft, row.id), reasons };
  };
}

const group = z.looseObject({ id: z.unknown().optional() });

function withoutDraft(field: FieldError): FieldError {
  return { ...field, path: field.path.replace(/^draft\.?/, '') };
}

/** @returns never both a row and reasons */
export function rowOrReasons<Row>(
  schema: z.ZodType<Row>,
  raw: unknown,
):
  | { readonly row: Row; readonly reasons: readonly [] }
  | { readonly row: null; readonly reasons: readonly FieldError[] } {
  const parsed = schema.safeParse(raw);
  return parsed.success
    ? { row: parsed.data, reasons: [] }
    : { row: null, reasons: badInput(parsed.error, raw).error.fields };
}
