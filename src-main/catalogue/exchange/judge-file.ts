import type { EntryPlace, ExchangeEntry } from '../../../shared-types/exchange.ts';
import type { KeptEstimate } from '../../../shared-types/field-log.ts';
import type { Item } from '../../../shared-types/item.ts';
import type { FieldError } from '../../../shared-types/outcome.ts';
import type { Reading } from '../../../shared-types/reading.ts';
import type { Scenario } from '../../../shared-types/scenario.ts';
import { settings as settingsSchema, type Settings } from '../../../shared-types/settings.ts';
import type { Tour } from '../../../shared-types/tour.ts';
import { markTwins } from '../csv/twins.ts';
import { estimateKey, type CatalogueContent } from './content.ts';
import { labelledWords, notedWords, settingsWords } from './entry-words.ts';
import { judgeList, type Judged, type ListInQuestion } from './judge-list.ts';
import { estimateFaults, kindFaults } from './kind-faults.ts';
import { readEntries, rowOrReasons } from './read-entries.ts';
import type { CatalogueFile } from './read-file.ts';
import { References, type Reference } from './references.ts';

/** What neither a schema nor the tables of the catalogue can see. */
export interface EntryRules {
  readonly tourFaults: (tour: Tour) => readonly FieldError[];
  readonly readingFaults: (reading: Reading, item: Item) => readonly FieldError[];
}

/** A file in question, what stands in the catalogue, and what of the file is wanted. */
export interface Question {
  readonly file: CatalogueFile;
  readonly stored: CatalogueContent;
  readonly rules: EntryRules;
  readonly isLeftOut: (place: EntryPlace) => boolean;
  readonly takesSettings: boolean;
}

export interface JudgedFile {
  readonly items: readonly Judged<Item>[];
  readonly tours: readonly Judged<Tour>[];
  readonly scenarios: readonly Judged<Scenario>[];
  readonly readings: readonly Judged<Reading>[];
  readonly estimates: readonly Judged<KeptEstimate>[];
  /** One, or none. */
  readonly settings: readonly Judged<Settings>[];
}

/** Says of each entry of a file what taking it would do to what is stored. */
export function judgeFile(question: Question): JudgedFile {
  const { file, stored } = question;
  const readItems = readEntries('items', file.items);
  const items = judgeItems(question, readItems);
  const toItems = new References('an item', stored.items, readItems, items);
  const readTours = readEntries('tours', file.tours);
  const tours = judgeTours(question, readTours, toItems);
  return {
    items,
    tours,
    scenarios: judgeScenarios(question, toItems),
    readings: judgeReadings(question, toItems),
    estimates: judgeEstimates(question, toItems),
    settings: judgeSettings(question, new References('a tour', stored.tours, readTours, tours)),
  };
}

/** All entries, in the order of the lists. */
export function entriesOf(judged: JudgedFile): readonly ExchangeEntry[] {
  const { items, tours, scenarios, readings, estimates, settings } = judged;
  return [items, tours, scenarios, readings, estimates, settings].flatMap((list) =>
    list.map(({ entry }) => entry),
  );
}

type Entries<Row> = ListInQuestion<Row>['entries'];

function judgeItems({ stored, isLeftOut }: Question, entries: Entries<Item>): readonly Judged<Item>[] {
  const judged = judgeList({
    list: 'items',
    entries,
    stored: byKey(stored.items, idOf),
    wordsOf: (entry) => labelledWords('items', entry),
    faults: kindFaults,
    needs: nothing,
    isLeftOut,
  });
  return withTwins(judged, stored.items);
}

function judgeTours(
  { stored, rules, isLeftOut }: Question,
  entries: Entries<Tour>,
  toItems: References<Item>,
): readonly Judged<Tour>[] {
  return judgeList({
    list: 'tours',
    entries,
    stored: byKey(stored.tours, idOf),
    wordsOf: (entry) => labelledWords('tours', entry),
    faults: (tour) => [...toItems.faults(leftAtHome(tour)), ...rules.tourFaults(tour)],
    needs: (tour) => toItems.needs(leftAtHome(tour)),
    isLeftOut,
  });
}

function judgeScenarios(
  { file, stored, isLeftOut }: Question,
  toItems: References<Item>,
): readonly Judged<Scenario>[] {
  return judgeList({
    list: 'scenarios',
    entries: readEntries('scenarios', file.scenarios),
    stored: byKey(stored.scenarios, idOf),
    wordsOf: (entry) => labelledWords('scenarios', entry),
    faults: (scenario) => toItems.faults(kitOf(scenario)),
    needs: (scenario) => toItems.needs(kitOf(scenario)),
    isLeftOut,
  });
}

function judgeReadings(
  { file, stored, rules, isLeftOut }: Question,
  toItems: References<Item>,
): readonly Judged<Reading>[] {
  return judgeList({
    list: 'readings',
    entries: readEntries('readings', file.readings),
    stored: byKey(stored.readings, idOf),
    wordsOf: (entry) => notedWords('readings', entry, (id) => toItems.find(id)),
    faults: ofItem(toItems, rules.readingFaults),
    needs: (reading) => toItems.needs(itemOf(reading)),
    isLeftOut,
  });
}

function judgeEstimates(
  { file, stored, isLeftOut }: Question,
  toItems: References<Item>,
): readonly Judged<KeptEstimate>[] {
  return judgeList({
    list: 'estimates',
    entries: readEntries('estimates', file.estimates),
    stored: byKey(stored.estimates, estimateKey),
    wordsOf: (entry) => notedWords('estimates', entry, (id) => toItems.find(id)),
    faults: ofItem(toItems, estimateFaults),
    needs: (estimate) => toItems.needs(itemOf(estimate)),
    isLeftOut,
  });
}

const onlySettings = 'settings';

function judgeSettings(
  { file: { settings: raw }, stored, takesSettings }: Question,
  toTours: References<Tour>,
): readonly Judged<Settings>[] {
  if (raw === undefined || raw === null) return [];
  return judgeList({
    list: 'settings',
    entries: [{ place: 0, key: onlySettings, ...rowOrReasons(settingsSchema, raw), raw }],
    stored: new Map(stored.settings === null ? [] : [[onlySettings, stored.settings]]),
    wordsOf: () => settingsWords,
    faults: (settings) => toTours.faults(chosenTour(settings)),
    needs: (settings) => toTours.needs(chosenTour(settings)),
    isLeftOut: () => !takesSettings,
  });
}

interface OfItem {
  readonly itemId: string;
}

/** What is noted of an item is judged by the item as it will stand. */
function ofItem<Row extends OfItem>(
  toItems: References<Item>,
  faults: (row: Row, item: Item) => readonly FieldError[],
): (row: Row) => readonly FieldError[] {
  return (row) => {
    const item = toItems.find(row.itemId);
    return item === undefined ? toItems.faults(itemOf(row)) : faults(row, item);
  };
}

function leftAtHome(tour: Tour): readonly Reference[] {
  return tour.leftAtHome.map((id, place) => ({ path: `leftAtHome.${place}`, id }));
}

function kitOf({ kit }: Scenario): readonly Reference[] {
  return kit.map(({ itemId }, place) => ({ path: `kit.${place}.itemId`, id: itemId }));
}

function itemOf({ itemId }: OfItem): readonly Reference[] {
  return [{ path: 'itemId', id: itemId }];
}

function chosenTour({ tourId }: Settings): readonly Reference[] {
  return tourId === null ? [] : [{ path: 'tourId', id: tourId }];
}

function nothing(): readonly [] {
  return [];
}

function idOf({ id }: { readonly id: string }): string {
  return id;
}

function byKey<Row>(rows: readonly Row[], keyOf: (row: Row) => string): ReadonlyMap<string, Row> {
  return new Map(rows.map((row) => [keyOf(row), row]));
}

/** Marks the new items that look like one that is there under another id, or like one above. */
function withTwins(judged: readonly Judged<Item>[], stored: readonly Item[]): readonly Judged<Item>[] {
  const fresh = judged.flatMap(({ entry, row }) =>
    entry.fate === 'new' && row !== null ? [{ line: entry.place, item: row }] : [],
  );
  const twins = new Map(markTwins(fresh, stored).map(({ line, twin }) => [line, twin]));
  return judged.map((each) => ({
    ...each,
    entry: { ...each.entry, twin: twins.get(each.entry.place) ?? null },
  }));
}
