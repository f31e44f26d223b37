import { join } from 'node:path';
import { todayFrom } from '../../shared-types/dates.ts';
import { success } from '../../shared-types/outcome.ts';
import { loadDemoIfEmpty } from '../catalogue/demo.ts';
import { openCatalogue } from '../catalogue/open.ts';
import { climateCredit, climateSources } from '../catalogue/climate-credit.ts';
import { writeClimateNotes } from '../catalogue/climate-notes.ts';
import { catalogueCalls } from './calls/catalogue-calls.ts';
import { comparisonCalls } from './calls/comparison-calls.ts';
import { exchangeCalls } from './calls/exchange-calls.ts';
import { itemCsvCalls } from './calls/item-csv-calls.ts';
import { kitCalls } from './calls/kit-calls.ts';
import { legRideCalls } from './calls/leg-ride-calls.ts';
import { legSunCalls } from './calls/leg-sun-calls.ts';
import { outlookCalls } from './calls/outlook-calls.ts';
import { readingCalls } from './calls/reading-calls.ts';
import { runCalls } from './calls/run-calls.ts';
import { sheetCalls } from './calls/sheet-calls.ts';
import { startCalls } from './calls/start-calls.ts';
import { stopCalls } from './calls/stop-calls.ts';
import { trackCalls } from './calls/track-calls.ts';
import { upgradeCalls } from './calls/upgrade-calls.ts';
import { createComparisonDesk } from './comparison-desk.ts';
import type { Crew } from './crew.ts';
import type { FileDesk } from './file-desk.ts';
import { createMapDesk } from './outlook/map-desk.ts';
import { createSwingsDesk } from './outlook/swings-desk.ts';
import { createRunBook } from './run-book.ts';
import { createSheetDesk } from './sheet-desk.ts';
import { createTrackDesk } from './track-intake/track-desk.ts';
import { createUpgradeDesk } from './upgrade/upgrade-desk.ts';
import type { Handlers } from '../../shared-types/contract.ts';

export interface WorkbenchOptions {
  /** The folder that holds the catalogue; made when missing. */
  readonly dataFolder: string;
  readonly host: 'electron' | 'loopback';
  readonly version: string;
  readonly files: FileDesk;
  /** Closed with the workbench. */
  readonly crew: Crew;
}

export interface Workbench {
  readonly handlers: Handlers;
  close(): void;
}

/** The catalogue's file inside the data folder. */
export const catalogueFile = 'catalogue.sqlite3';

/**
 * Opens the workbench on a data folder: the catalogue in it, the demo on a first start, and a handler for every call of the
 * contract. Throws a `StorageError` whose message says what a person can do when the catalogue can't be opened.
 */
export function openWorkbench(options: WorkbenchOptions): Workbench {
  const file = join(options.dataFolder, catalogueFile);
  const catalogue = openCatalogue(file);
  writeClimateNotes(options.dataFolder);
  loadDemoIfEmpty(catalogue.write);
  const { version, host, dataFolder, files, crew } = options;
  const book = createRunBook();
  const desk = createComparisonDesk(catalogue, crew, book);
  const swings = createSwingsDesk(catalogue, crew, book);
  return {
    handlers: {
      about: () => success({ version, host, dataFolder, climateCredit, climateSources }),
      ...catalogueCalls(catalogue),
      ...itemCsvCalls(catalogue, files),
      ...exchangeCalls(catalogue, { catalogueFile: file, files, version, now: () => new Date() }),
      ...startCalls(catalogue),
      ...legRideCalls(catalogue),
      ...trackCalls(createTrackDesk(() => performance.now())),
      ...legSunCalls(catalogue),
      ...runCalls(book),
      ...comparisonCalls(desk),
      ...kitCalls(catalogue, crew, book, () => performance.now()),
      ...outlookCalls(createMapDesk(catalogue, crew, book), swings),
      ...upgradeCalls(createUpgradeDesk(catalogue, crew, book)),
      ...stopCalls(catalogue),
      ...readingCalls(catalogue, () => new Date()),
      ...sheetCalls(createSheetDesk(catalogue, desk, swings), files, version, () => todayFrom(new Date())),
    },
    close: () => {
      crew.close();
      catalogue.close();
    },
  };
}
