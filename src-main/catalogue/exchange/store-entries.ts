import type { AddedEntries, FormerState } from '../../../shared-types/exchange.ts';
import { inTransaction, type WriteDb } from '../connection.ts';
import { mustSave } from '../demo.ts';
import { saveItem } from '../items.ts';
import { keepEstimate } from '../reading-estimates.ts';
import { saveReading } from '../readings.ts';
import { saveScenario } from '../scenarios.ts';
import { saveSettings } from '../settings.ts';
import { saveTour } from '../tours.ts';
import type { CatalogueContent } from './content.ts';
import { catalogueFileText, type FileHead } from './file-text.ts';
import type { JudgedFile } from './judge-file.ts';
import type { Judged } from './judge-list.ts';

/** Stores what is taken of a file: all of it or nothing. What is there already in the same words is not touched. */
export function storeEntries(write: WriteDb, judged: JudgedFile): void {
  inTransaction(write, () => {
    for (const { id, ...item } of takenOf(judged.items)) saveItem(write, item, id);
    for (const { id, ...tour } of takenOf(judged.tours)) mustSave(saveTour(write, tour, id));
    for (const { id, ...scenario } of takenOf(judged.scenarios)) mustSave(saveScenario(write, scenario, id));
    for (const { id, ...reading } of takenOf(judged.readings)) mustSave(saveReading(write, reading, id));
    for (const estimate of takenOf(judged.estimates)) keepEstimate(write, estimate);
    for (const settings of takenOf(judged.settings)) mustSave(saveSettings(write, settings));
  });
}

/** How many entries are taken that were not there before, and how many that were. */
export function takenCounts(judged: JudgedFile): { readonly added: number; readonly changed: number } {
  const taken = Object.values(judged).flatMap((list: readonly Judged<unknown>[]) =>
    list.filter(({ isTaken }) => isTaken),
  );
  const changed = taken.filter(({ before }) => before !== null).length;
  return { added: taken.length - changed, changed };
}

/** What stands in the place of what is taken, and what of it will be new. */
export function formerState(judged: JudgedFile, head: FileHead): FormerState {
  const { items, tours, scenarios, readings, estimates, settings } = judged;
  const changed: CatalogueContent = {
    items: beforeOf(items),
    tours: beforeOf(tours),
    scenarios: beforeOf(scenarios),
    readings: beforeOf(readings),
    estimates: beforeOf(estimates),
    settings: beforeOf(settings)[0] ?? null,
  };
  return { text: catalogueFileText(changed, head), added: addedOf(judged) };
}

function addedOf({ items, tours, scenarios, readings, estimates }: JudgedFile): AddedEntries {
  return {
    items: freshOf(items).map(({ id }) => id),
    tours: freshOf(tours).map(({ id }) => id),
    scenarios: freshOf(scenarios).map(({ id }) => id),
    readings: freshOf(readings).map(({ id }) => id),
    estimates: freshOf(estimates).map(({ itemId, measure }) => ({ itemId, measure })),
  };
}

function takenOf<Row>(list: readonly Judged<Row>[]): Row[] {
  return list.flatMap(({ row, isTaken }) => (isTaken && row !== null ? [row] : []));
}

function freshOf<Row>(list: readonly Judged<Row>[]): Row[] {
  return takenOf(list.filter(({ before }) => before === null));
}

function beforeOf<Row>(list: readonly Judged<Row>[]): Row[] {
  return list.flatMap(({ before, isTaken }) => (isTaken && before !== null ? [before] : []));
}
