import type { EntryPlace, ExchangeEntry, FieldChange } from '../../../shared-types/exchange.ts';
import type { FieldError } from '../../../shared-types/outcome.ts';
import type { EntryWords } from './entry-words.ts';
import { fieldChanges } from './field-changes.ts';
import type { ReadEntry } from './read-entries.ts';

/** An entry with the row it makes, and the row that stands there now. */
export interface Judged<Row> {
  readonly entry: ExchangeEntry;
  /** null of a refused one. */
  readonly row: Row | null;
  readonly before: Row | null;
  /** New or changed, and not left out. */
  readonly isTaken: boolean;
}

/** One list of a file, and what its entries are judged by. */
export interface ListInQuestion<Row> {
  readonly list: EntryPlace['list'];
  readonly entries: readonly ReadEntry<Row>[];
  /** By what entries go by. */
  readonly stored: ReadonlyMap<string, Row>;
  readonly wordsOf: (entry: ReadEntry<Row>) => EntryWords;
  readonly faults: (row: Row, before: Row | undefined) => readonly FieldError[];
  /** New entries of the file that the row refers to. */
  readonly needs: (row: Row) => readonly EntryPlace[];
  readonly isLeftOut: (place: EntryPlace) => boolean;
}

export function judgeList<Row>(given: ListInQuestion<Row>): readonly Judged<Row>[] {
  return given.entries.map((read) => {
    const before = read.key === null ? undefined : given.stored.get(read.key);
    const verdict = verdictOn(read, before, given.faults);
    const row = verdict.fate === 'refused' ? null : read.row;
    const place = { list: given.list, place: read.place };
    const needs = row === null ? [] : given.needs(row);
    return {
      entry: { ...place, ...given.wordsOf(read), ...verdict, twin: null, needs },
      row,
      before: before ?? null,
      isTaken: (verdict.fate === 'new' || verdict.fate === 'changed') && !given.isLeftOut(place),
    };
  });
}

type Verdict = Pick<ExchangeEntry, 'fate' | 'changes' | 'reasons' | 'more'>;

/** What stands there already is not asked whether it would be taken: it was, and changes nothing. */
function verdictOn<Row>(
  { row, reasons }: ReadEntry<Row>,
  before: Row | undefined,
  faults: ListInQuestion<Row>['faults'],
): Verdict {
  if (row === null) return refused(reasons);
  const changes = before === undefined ? null : fieldChanges(before, row);
  if (changes?.length === 0) return plain('same');
  const found = faults(row, before);
  if (found.length > 0) return refused(found);
  return changes === null ? plain('new') : changed(changes);
}

function plain(fate: 'new' | 'same'): Verdict {
  return { fate, changes: [], reasons: [], more: 0 };
}

/** As many as a rider reads in one row; the rest are counted. */
const mostNamed = 6;

function refused(reasons: readonly FieldError[]): Verdict {
  return { fate: 'refused', changes: [], reasons: reasons.slice(0, mostNamed), more: beyond(reasons) };
}

function changed(changes: readonly FieldChange[]): Verdict {
  return { fate: 'changed', changes: changes.slice(0, mostNamed), reasons: [], more: beyond(changes) };
}

function beyond({ length }: readonly unknown[]): number {
  return Math.max(0, length - mostNamed);
}
