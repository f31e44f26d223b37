import { todayFrom } from '../../shared-types/dates.ts';
import type { CallName, Handlers } from '../../shared-types/contract.ts';
import { loadDemoIfEmpty } from '../catalogue/demo.ts';
import { openCatalogue, type OpenedCatalogue } from '../catalogue/open.ts';
import { asStorageError } from '../catalogue/storage-error.ts';
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

/** Calls about the program and the place of its catalogue: they answer whether or not it could be opened. */
export type ProgramCallName = Extract<CallName, 'about' | `diagnostics.${string}` | `catalogue.${string}`>;
/** Calls about what a catalogue holds. */
export type ContentHandlers = Omit<Handlers, ProgramCallName>;

export interface ContentSurroundings {
  readonly version: string;
  readonly files: FileDesk;
  readonly crew: Crew;
  /** The rider's clock. */
  readonly now: () => Date;
}

/** A catalogue that is open, and the answers about what it holds. */
export interface Content {
  readonly catalogue: OpenedCatalogue;
  readonly handlers: ContentHandlers;
  /** Ends what is under way on it first. */
  close(): Promise<void>;
}

/**
 * Opens a catalogue, with the demo on a first start. Throws a `StorageError` whose message says what a person can do, and
 * leaves the file as it was.
 */
export function openContent(file: string, mustExist: boolean, surroundings: ContentSurroundings): Content {
  const catalogue = openCatalogue(file, { mustExist, now: surroundings.now() });
  try {
    loadDemoIfEmpty(catalogue.write);
  } catch (thrown) {
    catalogue.close();
    throw asStorageError(thrown, file) ?? thrown;
  }
  return contentOf(catalogue, file, surroundings);
}

function contentOf(
  catalogue: OpenedCatalogue,
  file: string,
  { version, files, crew, now }: ContentSurroundings,
): Content {
  const book = createRunBook();
  const desk = createComparisonDesk(catalogue, crew, book);
  const swings = createSwingsDesk(catalogue, crew, book);
  return {
    catalogue,
    handlers: {
      ...catalogueCalls(catalogue),
      ...itemCsvCalls(catalogue, files),
      ...exchangeCalls(catalogue, { catalogueFile: file, files, version, now }),
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
      ...readingCalls(catalogue, now),
      ...sheetCalls(createSheetDesk(catalogue, desk, swings), files, version, () => todayFrom(now())),
    },
    close: async () => {
      await book.cancelAll();
      catalogue.close();
    },
  };
}
