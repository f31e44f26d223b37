import type { EntryPlace } from '../../../../shared-types/exchange.ts';
import type { ReadDb, WriteDb } from '../../../../src-main/catalogue/connection.ts';
import { mustSave } from '../../../../src-main/catalogue/demo.ts';
import { readContent, type CatalogueContent } from '../../../../src-main/catalogue/exchange/content.ts';
import { catalogueFileText } from '../../../../src-main/catalogue/exchange/file-text.ts';
import {
  judgeFile,
  type EntryRules,
  type JudgedFile,
} from '../../../../src-main/catalogue/exchange/judge-file.ts';
import { readCatalogueFile } from '../../../../src-main/catalogue/exchange/read-file.ts';
import { saveItem } from '../../../../src-main/catalogue/items.ts';
import { keepEstimate } from '../../../../src-main/catalogue/reading-estimates.ts';
import { saveReading } from '../../../../src-main/catalogue/readings.ts';
import { saveScenario } from '../../../../src-main/catalogue/scenarios.ts';
import { saveSettings } from '../../../../src-main/catalogue/settings.ts';
import { saveTour } from '../../../../src-main/catalogue/tours.ts';

export const head = { madeOn: '2027-04-18', program: '0.0.0' };
export const noRules: EntryRules = { tourFaults: () => [], readingFaults: () => [] };

/** Lays a catalogue down as its own calls would. */
export function lay(write: WriteDb, content: CatalogueContent): void {
  for (const { id, ...item } of content.items) saveItem(write, item, id);
  for (const { id, ...tour } of content.tours) mustSave(saveTour(write, tour, id));
  for (const { id, ...scenario } of content.scenarios) mustSave(saveScenario(write, scenario, id));
  for (const { id, ...reading } of content.readings) mustSave(saveReading(write, reading, id));
  for (const estimate of content.estimates) keepEstimate(write, estimate);
  if (content.settings !== null) mustSave(saveSettings(write, content.settings));
}

export function savedText(read: ReadDb): string {
  return catalogueFileText(readContent(read), head);
}

/** A file of the current form with these lists. */
export function fileOf(lists: Readonly<Record<string, unknown>>): string {
  return JSON.stringify({ format: 'chargewright-catalogue', formatVersion: 1, ...lists });
}

interface Wanted {
  readonly rules?: EntryRules;
  readonly leaveOut?: readonly EntryPlace[];
  readonly takesSettings?: boolean;
}

/** Judges a file that must be one. */
export function judged(
  read: ReadDb,
  text: string,
  { rules = noRules, leaveOut = [], takesSettings = true }: Wanted = {},
): JudgedFile {
  const file = readCatalogueFile(text);
  if (!file.ok) throw new Error(file.error.message);
  return judgeFile({
    file: file.value,
    stored: readContent(read),
    rules,
    isLeftOut: ({ list, place }) => leaveOut.some((out) => out.list === list && out.place === place),
    takesSettings,
  });
}
