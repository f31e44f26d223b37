import { z } from 'zod';
import type { BreakEvenMap } from './break-even.ts';
import {
  backupName,
  cataloguePath,
  type CatalogueBackup,
  type CatalogueChoices,
  type CatalogueOpening,
  type CatalogueState,
} from './catalogue-file.ts';
import type { ClimateSource, Station } from './climate.ts';
import type { Advice, Comparison, ScoredRow } from './comparison.ts';
import { pageFault, type Diagnostics } from './diagnostics.ts';
import { addedEntries, exchangeChoice, type ExchangePreview, type ExchangeTaking } from './exchange.ts';
import { count, id, label } from './field.ts';
import { measure, onTourQuestion, type FieldLog, type OnTour, type StoredEstimate } from './field-log.ts';
import { itemDraft, type Item, type ItemDraft, type ItemKind } from './item.ts';
import { itemState } from './item-common.ts';
import { kitSearchRequest, type KitSearchResult } from './kit-search.ts';
import type { LegRide } from './leg-ride.ts';
import { lying, sunBy, type LegSun } from './leg-sun.ts';
import type { Outcome } from './outcome.ts';
import { ownStart } from './own-start.ts';
import { readingDraft, type Reading } from './reading.ts';
import { mostScenariosCompared, scenarioDraft, type Scenario } from './scenario.ts';
import { preferences, settings, type Settings } from './settings.ts';
import { sheetForm } from './sheet.ts';
import { stopSituation, type StopPlan } from './stop-plan.ts';
import type { Swings } from './swings.ts';
import { tourDraft, type Tour } from './tour.ts';
import type { TrackProfile } from './track.ts';
import { upgradeQuestion, type Upgrade } from './upgrade.ts';

/** One call: the schema its input must pass and, as a type only, what it answers. */
export interface Call<Input extends z.ZodType, Result> {
  readonly input: Input;
  /** Never set: it carries the result type from this table to client and hosts. */
  readonly result?: Result;
}

const call =
  <Result>() =>
  <Input extends z.ZodType>(input: Input): Call<Input, Result> => ({ input });

const legNumber = z.int({ error: 'the number of a leg' }).min(0, { error: 'the number of a leg' });
const nothing = z.strictObject({});
const byId = z.strictObject({ id });

/** Files pass as text or bytes inside a call; larger ones are refused before they are parsed. */
export const largestFileBytes = 20_000_000;
/** The largest body a host accepts: a file, its escaping, which may double it, and the call around it. */
export const largestBodyBytes = 44_000_000;

const fileText = z
  .string({ error: 'the text of a file' })
  .max(largestFileBytes, { error: `a file of at most ${largestFileBytes / 1e6} MB` });

/** A track comes in parts, so that neither side ever holds it whole. */
export const largestTrackBytes = 50_000_000;
/** Characters of one part. */
export const largestTrackPart = 1_000_000;

/** How a file reached the rider: written by a dialog, handed to the page to download, or not wanted after all. */
export type Delivery =
  | { readonly as: 'saved'; readonly path: string }
  | { readonly as: 'cancelled' }
  | {
      readonly as: 'download';
      readonly fileName: string;
      readonly mediaType: string;
      readonly base64: string;
    };

/** A file the rider chose in a dialog; `ask-page` when this host has none and the page must ask. */
export type Choosing =
  | { readonly as: 'chosen'; readonly name: string; readonly text: string }
  | { readonly as: 'cancelled' }
  | { readonly as: 'ask-page' };

/** A line of an inventory CSV that could not be taken, with the line number as a spreadsheet shows it. */
export interface CsvProblem {
  readonly line: number;
  readonly column: string;
  readonly message: string;
}

/** A line of an inventory CSV that can be taken as it stands. */
export interface CsvLine {
  readonly line: number;
  readonly item: ItemDraft;
  /** Where something of its kind and label is already: it may be the same thing twice. */
  readonly twin: 'inventory' | 'file' | null;
}

export interface CsvReading {
  readonly lines: readonly CsvLine[];
  readonly problems: readonly CsvProblem[];
}

/** What was stored of an inventory CSV: nothing, where a line is in error and the rider did not say to pass it over. */
export interface CsvAddition {
  readonly added: readonly Item[];
  readonly problems: readonly CsvProblem[];
}

/** What a column of an inventory CSV takes, for the kinds it takes that for. */
export interface CsvColumn {
  readonly name: string;
  readonly kinds: readonly ItemKind[];
  readonly allowed: string;
  /** What an empty cell stands for. */
  readonly whenEmpty: string;
  readonly example: string;
}

/** More lines than a rider has things, and more items than one call needs to name; what is longer is something else. */
export const mostCsvLines = 10_000;
const itemsNamed = <T extends z.ZodType>(each: T) => {
  const error = `1 to ${mostCsvLines.toLocaleString('en')} items`;
  return z.array(each, { error }).min(1, { error }).max(mostCsvLines, { error });
};

export interface About {
  readonly version: string;
  readonly host: 'electron' | 'loopback';
  readonly dataFolder: string;
  readonly climateCredit: string;
  /** The codes in a station's source. */
  readonly climateSources: readonly ClimateSource[];
}

/**
 * Every call there is. Preload, both hosts and the client derive from this table; nothing about a call is written twice.
 * `save` with an id replaces that row or puts a removed one back; without an id it adds one.
 */
export const contract = {
  about: call<About>()(nothing),
  /** What helps to find a fault. */
  'diagnostics.get': call<Diagnostics>()(nothing),
  /** Writes a fault of the page to the log; `logged` is false once the page has written more than is of use. */
  'diagnostics.report': call<{ readonly logged: boolean }>()(pageFault),
  /** Which file the catalogue is in, and whether it is open; with the calls below it answers where it is not. */
  'catalogue.state': call<CatalogueState>()(nothing),
  /** Opens the same file again, once what stood in the way may be gone. */
  'catalogue.tryAgain': call<CatalogueState>()(nothing),
  /** What could take its place. */
  'catalogue.choices': call<CatalogueChoices>()(nothing),
  'catalogue.backUp': call<CatalogueBackup>()(nothing),
  /**
   * Puts a copy of a backup beside the catalogue and uses that from now on: the newest that is sound where `name` is null. The
   * file used until now stays as it is. After each of these three the page is loaded anew.
   */
  'catalogue.restore': call<CatalogueState>()(z.strictObject({ name: z.nullable(backupName) })),
  /** Uses a new catalogue beside the one that stays as it is; a first start, with the demo. */
  'catalogue.startEmpty': call<CatalogueState>()(nothing),
  /**
   * Uses another catalogue, or another folder: its catalogue, or a new one where it has none. Null asks by a dialog, where the
   * host has one.
   */
  'catalogue.openOther': call<CatalogueOpening>()(z.strictObject({ path: z.nullable(cataloguePath) })),
  'items.list': call<readonly Item[]>()(nothing),
  'items.save': call<Item>()(z.strictObject({ id: id.optional(), item: itemDraft })),
  'items.setState': call<Item>()(z.strictObject({ id, state: itemState })),
  /** Removes all of them or none; refused while a scenario or a tour names one of them. */
  'items.remove': call<readonly Item[]>()(z.strictObject({ ids: itemsNamed(id) })),
  /** Puts removed items back under their ids: all of them or none. */
  'items.putBack': call<readonly Item[]>()(
    z.strictObject({ items: itemsNamed(z.strictObject({ id, item: itemDraft })) }),
  ),
  /** Moves all of them or none. */
  'items.setStates': call<readonly Item[]>()(
    z.strictObject({ changes: itemsNamed(z.strictObject({ id, state: itemState })) }),
  ),
  /** Reads an inventory CSV and stores nothing. */
  'items.readCsv': call<CsvReading>()(z.strictObject({ text: fileText })),
  /** Stores the lines of an inventory CSV but those to leave out; with a line in error only if told to pass over such. */
  'items.addCsv': call<CsvAddition>()(
    z.strictObject({
      text: fileText,
      leaveOut: z
        .array(z.int({ error: 'the number of a line' }))
        .max(mostCsvLines, { error: `at most ${mostCsvLines.toLocaleString('en')} lines` }),
      passOverErrors: z.boolean(),
    }),
  ),
  /** What each column of an inventory CSV takes. */
  'items.csvColumns': call<readonly CsvColumn[]>()(nothing),
  /** Saves these items, in this order, as a CSV that reads back as the same items. */
  'items.saveCsv': call<Delivery>()(z.strictObject({ ids: itemsNamed(id) })),
  /** Saves a CSV with invented lines of every kind, to write one's own over. */
  'items.saveCsvTemplate': call<Delivery>()(nothing),
  'tours.list': call<readonly Tour[]>()(nothing),
  'tours.save': call<Tour>()(z.strictObject({ id: id.optional(), tour: tourDraft })),
  'tours.remove': call<Tour>()(byId),
  /** Begins to take in a GPX track; its parts follow in order. Nothing is stored. */
  'tracks.begin': call<{ readonly trackId: string }>()(
    z.strictObject({
      name: label({ label: 'File' }, 200),
      bytes: count({ label: 'Size', unit: 'bytes', min: 0, max: largestTrackBytes }),
    }),
  ),
  'tracks.add': call<{ readonly points: number }>()(
    z.strictObject({
      trackId: id,
      text: z
        .string({ error: 'the next part of the file' })
        .max(largestTrackPart, { error: `a part of at most ${largestTrackPart} characters` }),
    }),
  ),
  /** Answers what is kept of the track and forgets the rest. */
  'tracks.finish': call<TrackProfile>()(z.strictObject({ trackId: id })),
  'tracks.drop': call<{ readonly dropped: boolean }>()(z.strictObject({ trackId: id })),
  /** What the sun gives each panel on one leg of a stored tour; `leg` counts from 0. */
  'tours.legSun': call<LegSun>()(
    z.strictObject({
      tourId: id,
      leg: legNumber,
      lying,
      by: sunBy,
    }),
  ),
  /** How one leg of a stored tour is ridden with the kit of a scenario; `leg` counts from 0. */
  'tours.legRide': call<LegRide>()(z.strictObject({ tourId: id, leg: legNumber, scenarioId: id })),
  'scenarios.list': call<readonly Scenario[]>()(nothing),
  'scenarios.save': call<Scenario>()(z.strictObject({ id: id.optional(), scenario: scenarioDraft })),
  'scenarios.remove': call<Scenario>()(byId),
  /** Adds those of the three named methods that the catalogue has everything for and no scenario is named as. */
  'scenarios.addReadyMade': call<{ readonly added: readonly string[] }>()(nothing),
  /** Stores what a rider begins with, and the methods that it makes: all or nothing. */
  'start.own': call<{ readonly tourId: string }>()(z.strictObject({ own: ownStart })),
  /** Puts the invented demo back, and compares its tour. */
  'start.demo': call<{ readonly tourId: string }>()(nothing),
  'settings.get': call<Settings>()(nothing),
  'settings.save': call<Settings>()(z.strictObject({ settings })),
  'stations.list': call<readonly Station[]>()(nothing),
  /** How far a long run is, 0..1; null when none of that name is under way. */
  'runs.progress': call<{ readonly share: number | null }>()(z.strictObject({ runId: id })),
  'runs.cancel': call<{ readonly cancelled: boolean }>()(z.strictObject({ runId: id })),
  /**
   * Simulates the tour under each scenario (all of them when `scenarioIds` is null) and ranks them. The caller names the
   * run, to ask how far it is and to cancel it; a cancelled run answers `cancelled`.
   */
  'comparison.run': call<Comparison>()(
    z.strictObject({
      runId: id,
      tourId: id,
      scenarioIds: z.nullable(z.array(id).min(1).max(mostScenariosCompared)),
    }),
  ),
  /** Ranks the scenarios of the last run anew under other weights and limits; simulates nothing. */
  'comparison.rank': call<{ readonly scores: readonly ScoredRow[]; readonly advice: Advice }>()(
    z.strictObject({ tourId: id, preferences }),
  ),
  /** Finds the kits that no other beats. A search that is stopped answers what it has found, not complete. */
  'kits.search': call<KitSearchResult>()(kitSearchRequest.extend({ runId: id })),
  /** What a search under way has found; null when none of that name is. */
  'kits.soFar': call<{ readonly result: KitSearchResult | null }>()(z.strictObject({ runId: id })),
  /**
   * Draws which scenario wins on one leg, by the length of a tour and the days between its walls; a long run as a comparison
   * is. When only weights or limits changed since the last map it answers at once.
   */
  'outlook.map': call<BreakEvenMap>()(
    z.strictObject({
      runId: id,
      tourId: id,
      leg: legNumber,
      scenarioIds: z.nullable(z.array(id).min(1).max(mostScenariosCompared)),
    }),
  ),
  /**
   * Moves each assumption alone from its low to its high, and finds where the first of the plan gives up its place; a long run
   * as a comparison is. Asked again under other weights or limits, it walks only what is new.
   */
  'outlook.swings': call<Swings>()(
    z.strictObject({
      runId: id,
      tourId: id,
      scenarioIds: z.nullable(z.array(id).min(2).max(mostScenariosCompared)),
      preferences,
    }),
  ),
  /** Ranks the last map anew under other weights and limits; walks nothing. */
  'outlook.rankMap': call<BreakEvenMap>()(z.strictObject({ tourId: id, leg: legNumber, preferences })),
  /** Checks a change of the kit on every tour asked for, on the same histories before and after; a long run as a comparison is. */
  'upgrade.check': call<Upgrade>()(upgradeQuestion.extend({ runId: id })),
  /** Plans what to plug in when at a stop with a wall; at once. */
  'stops.plan': call<StopPlan>()(stopSituation),
  /** All readings of the field log, and what is estimated from them. */
  'readings.log': call<FieldLog>()(nothing),
  'readings.save': call<Reading>()(z.strictObject({ id: id.optional(), reading: readingDraft })),
  'readings.remove': call<Reading>()(byId),
  /** Stores what the readings of an item say as its value, with the date and how many they were. */
  'readings.store': call<StoredEstimate>()(z.strictObject({ itemId: id, measure })),
  /** How long what is stored now, by today's readings, lasts on a tour; at once. */
  'readings.onTour': call<OnTour>()(onTourQuestion),
  /**
   * Writes the comparison sheet and hands it over. `withSwings` looks for what would change the answer first, unless that is
   * known: a long run as a comparison is.
   */
  'sheet.save': call<Delivery>()(
    z.strictObject({
      runId: id,
      tourId: id,
      scenarioIds: z.nullable(z.array(id).min(1).max(mostScenariosCompared)),
      withSwings: z.boolean({ error: 'yes or no' }),
      form: sheetForm,
    }),
  ),
  /** Saves the whole catalogue as one file, which can be taken in here or elsewhere. */
  'exchange.save': call<Delivery>()(nothing),
  /** Says of each entry of a catalogue file what taking it in would do, and stores nothing. */
  'exchange.preview': call<ExchangePreview>()(z.strictObject({ text: fileText })),
  /**
   * Stores the entries of a catalogue file but those to leave out, after a copy of the catalogue: all of them or none. Where
   * one is refused, only if told to pass over such.
   */
  'exchange.take': call<ExchangeTaking>()(exchangeChoice.extend({ text: fileText })),
  /** Puts back what a taking changed and removes what it added: all of it or nothing. */
  'exchange.takeBack': call<{ readonly putBack: number }>()(
    z.strictObject({ text: fileText, added: addedEntries }),
  ),
  'files.choose': call<Choosing>()(
    z.strictObject({
      purpose: z.enum(['inventory-csv', 'catalogue-json'], {
        error: 'one of: inventory-csv, catalogue-json',
      }),
    }),
  ),
} as const;

export type Contract = typeof contract;
export type CallName = keyof Contract;
/** What a caller passes. */
export type CallInput<N extends CallName> = z.input<Contract[N]['input']>;
/** What a handler receives after parsing. */
export type ParsedInput<N extends CallName> = z.output<Contract[N]['input']>;
export type CallResult<N extends CallName> = NonNullable<Contract[N]['result']>;

export const callNames = Object.keys(contract) as CallName[];

export function isCallName(name: unknown): name is CallName {
  return typeof name === 'string' && Object.hasOwn(contract, name);
}

/** The bridge both hosts offer to the page: one function, whose types follow the table. */
export type Invoke = <N extends CallName>(name: N, input: CallInput<N>) => Promise<Outcome<CallResult<N>>>;

/** What the workbench implements, a handler for each call. */
export type Handlers = {
  readonly [N in CallName]: (
    input: ParsedInput<N>,
  ) => Outcome<CallResult<N>> | Promise<Outcome<CallResult<N>>>;
};
