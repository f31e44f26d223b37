import { todayFrom } from '../../../shared-types/dates.ts';
import { largestFileBytes, type Handlers } from '../../../shared-types/contract.ts';
import type { EntryPlace, ExchangeChoice, ExchangeTaking } from '../../../shared-types/exchange.ts';
import { formatNumber, wordsLocale } from '../../../shared-types/figures.ts';
import { failure, success, type FieldError, type Outcome } from '../../../shared-types/outcome.ts';
import { backUp } from '../../catalogue/backup.ts';
import { inMemory } from '../../catalogue/connection.ts';
import { readContent } from '../../catalogue/exchange/content.ts';
import { catalogueFileText, type FileHead } from '../../catalogue/exchange/file-text.ts';
import {
  entriesOf,
  judgeFile,
  type EntryRules,
  type JudgedFile,
} from '../../catalogue/exchange/judge-file.ts';
import { readCatalogueFile, type CatalogueFile } from '../../catalogue/exchange/read-file.ts';
import { formerState, storeEntries, takenCounts } from '../../catalogue/exchange/store-entries.ts';
import { takeBack } from '../../catalogue/exchange/take-back.ts';
import type { OpenedCatalogue } from '../../catalogue/open.ts';
import { readStations } from '../../catalogue/stations.ts';
import { withStorageOutcome } from '../../catalogue/storage-error.ts';
import { readingFaults } from '../field-log/reading-faults.ts';
import { withFileOutcome } from '../file-fault.ts';
import type { FileDesk, MadeFile } from '../file-desk.ts';
import { longestSunshineH } from '../longest-sunshine.ts';
import { tourFaults } from '../tour-faults.ts';

type ExchangeCalls = Pick<
  Handlers,
  'exchange.save' | 'exchange.preview' | 'exchange.take' | 'exchange.takeBack'
>;

/** What the exchange needs beside the catalogue. */
export interface ExchangeSurroundings {
  /** Where the catalogue lies, to copy it before much of it changes. */
  readonly catalogueFile: string;
  readonly files: FileDesk;
  /** Of the program. */
  readonly version: string;
  /** The rider's clock. */
  readonly now: () => Date;
}

const wholeFile: ExchangeChoice = { leaveOut: [], passOverRefused: false, settings: true };

/** The calls by which a whole catalogue goes out as a file and comes in from one. */
export function exchangeCalls(
  catalogue: OpenedCatalogue,
  { catalogueFile, files, version, now }: ExchangeSurroundings,
): ExchangeCalls {
  const { read, write } = catalogue;
  const head = (): FileHead => ({ madeOn: todayFrom(now()), program: version });
  const judged = (text: string, choice: ExchangeChoice): Outcome<readonly [CatalogueFile, JudgedFile]> => {
    const file = readCatalogueFile(text);
    if (!file.ok) return file;
    return success([file.value, judge(file.value, catalogue, choice, todayFrom(now()))]);
  };
  return {
    'exchange.save': () =>
      withFileOutcome(async () => {
        const made = withStorageOutcome(() => madeFile(catalogueFileText(readContent(read), head()), head()));
        return made.ok ? success(await files.save(made.value)) : made;
      }),
    'exchange.preview': ({ text }) =>
      withStorageOutcome(() => {
        const outcome = judged(text, wholeFile);
        if (!outcome.ok) return outcome;
        const [{ madeOn = null, program = null }, entries] = outcome.value;
        return success({ madeOn, program, entries: entriesOf(entries) });
      }),
    'exchange.take': ({ text, ...choice }) =>
      withStorageOutcome(() => {
        const outcome = judged(text, choice);
        if (!outcome.ok) return outcome;
        const [, wanted] = outcome.value;
        const refused = refusedOf(wanted, choice);
        const counts = takenCounts(wanted);
        const stops = refused.length > 0 && !choice.passOverRefused;
        if (stops || counts.added + counts.changed === 0)
          return success<ExchangeTaking>({ added: 0, changed: 0, refused, former: null });
        if (catalogueFile !== inMemory) backUp(write, catalogueFile, now());
        const former = formerState(wanted, head());
        storeEntries(write, wanted);
        return success<ExchangeTaking>({ ...counts, refused, former });
      }),
    'exchange.takeBack': (former) => withStorageOutcome(() => takeBack(write, former)),
  };
}

function judge(
  file: CatalogueFile,
  { read }: OpenedCatalogue,
  { leaveOut, settings }: ExchangeChoice,
  today: string,
): JudgedFile {
  return judgeFile({
    file,
    stored: readContent(read),
    rules: rulesOf(file, today),
    isLeftOut: leftOut(leaveOut),
    takesSettings: settings,
  });
}

/** Where the file was made it may have been tomorrow already. */
function rulesOf({ madeOn }: CatalogueFile, today: string): EntryRules {
  const stations = readStations(longestSunshineH);
  const latest = madeOn !== undefined && madeOn > today ? madeOn : today;
  return {
    tourFaults: (tour) => fieldsOf(tourFaults(tour, stations)),
    readingFaults: (reading, item) => fieldsOf(readingFaults(reading, item, latest)),
  };
}

/** Under the names that fields have in the file: there an entry stands alone. */
function fieldsOf(refusal: Outcome<never> | null): readonly FieldError[] {
  if (refusal === null || refusal.ok) return [];
  return refusal.error.fields.map((field) => ({
    ...field,
    path: field.path.replace(/^(tour|reading)\./, ''),
  }));
}

function leftOut(places: readonly EntryPlace[]): (place: EntryPlace) => boolean {
  const keys = new Set(places.map(keyOf));
  return (place) => keys.has(keyOf(place));
}

function keyOf({ list, place }: EntryPlace): string {
  return `${list} ${place}`;
}

/** What nobody wants keeps nothing else from being stored. */
function refusedOf(judged: JudgedFile, { settings, leaveOut }: ExchangeChoice): ExchangeTaking['refused'] {
  const isLeftOut = leftOut(leaveOut);
  const isWanted = (entry: EntryPlace): boolean => (entry.list === 'settings' ? settings : !isLeftOut(entry));
  return entriesOf(judged).filter((entry) => entry.fate === 'refused' && isWanted(entry));
}

const bytesAMegabyte = 1e6;

/** What is not read again is not written, lest a rider rely on it. */
function madeFile(text: string, { madeOn }: FileHead): Outcome<MadeFile> {
  const bytes = new TextEncoder().encode(text);
  if (bytes.length <= largestFileBytes)
    return success({
      fileName: `chargewright-catalogue-${madeOn}.json`,
      mediaType: 'application/json',
      bytes,
    });
  const [size, most] = [bytes.length, largestFileBytes].map((count) =>
    formatNumber(count / bytesAMegabyte, { digits: 1, locale: wordsLocale }),
  );
  return failure(
    'too-large',
    `As one file the catalogue has ${size} MB, and files of at most ${most} MB are read again. Tracks take most of it: ` +
      'remove tours that are done, or copy the catalogue’s own file from the data folder.',
  );
}
