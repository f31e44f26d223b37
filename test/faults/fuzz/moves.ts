import fc from 'fast-check';
import { callNames, type CallName } from '../../../shared-types/contract.ts';
import type { FormerState } from '../../../shared-types/exchange.ts';
import { measure } from '../../../shared-types/field-log.ts';
import type { Item } from '../../../shared-types/item.ts';
import { noLimits } from '../../../shared-types/limits.ts';
import { readingDraft } from '../../../shared-types/reading.ts';
import type { Scenario } from '../../../shared-types/scenario.ts';
import type { Settings } from '../../../shared-types/settings.ts';
import { sheetForm } from '../../../shared-types/sheet.ts';
import type { Tour } from '../../../shared-types/tour.ts';
import { arbitraryOf, randomScenario, randomSettings } from '../../src-main/catalogue/random-drafts.ts';
import { anyInputOf } from './call-inputs.ts';
import { anyItem, likelyParts, likelyTour } from './likely-parts.ts';
import { shortTourId } from './start-rows.ts';

/** What a page knows of a catalogue, some of it out of date. */
export interface PageView {
  readonly items: readonly Item[];
  readonly tours: readonly Tour[];
  readonly scenarios: readonly Scenario[];
  readonly readingIds: readonly string[];
  readonly settings: Settings;
  /** Items seen before, some of them removed since. */
  readonly seen: readonly Item[];
  /** Catalogue files saved before. */
  readonly files: readonly string[];
  /** What the last taking answered. */
  readonly former: FormerState | null;
}

/** A call as a page makes it that looks at what it knows. */
export interface Move {
  readonly call: CallName;
  readonly inputFor: (view: PageView) => unknown;
}

/** Picks by chance; ids of rows that were there once are as good as any. */
type Pick = (most: number) => number;
type Made<Given> = (view: PageView, given: Given, pick: Pick) => unknown;

const chances = fc.array(fc.nat(), { minLength: 8, maxLength: 8 });

function move<Given>(call: CallName, givens: fc.Arbitrary<Given>, make: Made<Given>): fc.Arbitrary<Move> {
  return fc.tuple(givens, chances).map(([given, drawn]) => {
    const inputFor = (view: PageView): unknown => {
      let at = 0;
      return make(view, given, (most) => drawn[at++ % drawn.length]! % Math.max(1, most));
    };
    return Object.assign(
      { call, inputFor },
      { [fc.toStringMethod]: () => `${call} ${fc.stringify([given, drawn])}` },
    );
  });
}

const nothing = fc.constant(null);
const goneId = 'gone-by-now';

function someId(rows: readonly { readonly id: string }[], pick: Pick): string {
  return rows[pick(rows.length)]?.id ?? goneId;
}

function someIds(rows: readonly { readonly id: string }[], pick: Pick): string[] {
  return [...new Set([someId(rows, pick), someId(rows, pick), someId(rows, pick)])].slice(pick(3));
}

const kitOf = ({ seen }: PageView, pick: Pick) =>
  someIds(seen, pick).map((itemId) => ({ itemId, quantity: 1 + pick(3) }));

/** In place of one that is there, or as a new one. */
function savedAs(rows: readonly { readonly id: string }[], pick: Pick): { readonly id?: string } {
  return pick(2) === 0 ? {} : { id: someId(rows, pick) };
}

const tour = likelyTour([goneId]);
const sheetForms = arbitraryOf(sheetForm);
const scenario = randomScenario([goneId]);
const reading = arbitraryOf(readingDraft, likelyParts) as fc.Arbitrary<object>;
const items: readonly fc.Arbitrary<Move>[] = [
  move('items.save', anyItem, ({ seen }, item, pick) => ({ ...savedAs(seen, pick), item })),
  move('items.remove', nothing, ({ seen }, _, pick) => ({ ids: someIds(seen, pick) })),
  move('items.putBack', nothing, ({ seen }, _, pick) => {
    const { id, ...item } = seen[pick(seen.length)]!;
    return { items: [{ id, item }] };
  }),
  move('items.setStates', fc.constantFrom('owned', 'considering', 'retired'), ({ seen }, state, pick) => ({
    changes: someIds(seen, pick).map((id) => ({ id, state })),
  })),
  move('items.addCsv', nothing, () => ({
    text: 'kind,label,mass_g\naccessory,Cable,20\n',
    ...{ leaveOut: [], passOverErrors: true },
  })),
];

const plans: readonly fc.Arbitrary<Move>[] = [
  move('tours.save', tour, ({ tours, seen }, draft, pick) => ({
    ...savedAs(tours, pick),
    tour: { ...draft, leftAtHome: someIds(seen, pick) },
  })),
  move('tours.remove', nothing, ({ tours }, _, pick) => ({ id: someId(tours, pick) })),
  move('scenarios.save', scenario, (view, draft, pick) => ({
    ...savedAs(view.scenarios, pick),
    scenario: { ...draft, kit: kitOf(view, pick) },
  })),
  move('scenarios.remove', nothing, ({ scenarios }, _, pick) => ({ id: someId(scenarios, pick) })),
  move('scenarios.addReadyMade', nothing, () => ({})),
  move('settings.save', randomSettings([goneId]), ({ settings, tours }, random, pick) => ({
    settings: {
      ...random,
      tourId: pick(3) === 0 ? null : someId(tours, pick),
      // More histories and shorter steps only take longer.
      ...{ stepMinutes: settings.stepMinutes, sky: { ...random.sky, histories: settings.sky.histories } },
    },
  })),
  move('start.own', fc.tuple(anyItem, tour), (_, [item, ownTour], pick) => ({
    own: { items: [item], tour: ownTour, putDemoAway: pick(2) === 0 },
  })),
  move('start.demo', nothing, () => ({})),
];

const log: readonly fc.Arbitrary<Move>[] = [
  move('readings.save', reading, ({ seen }, draft, pick) => ({
    reading: pick(3) === 0 ? { ...draft, itemId: someId(seen, pick) } : draft,
  })),
  move('readings.remove', nothing, ({ readingIds }, _, pick) => ({
    id: readingIds[pick(readingIds.length)] ?? goneId,
  })),
  move('readings.store', fc.constantFrom(...measure.options), ({ seen }, name, pick) => ({
    ...(pick(2) === 0
      ? { itemId: someId(seen, pick), measure: name }
      : { itemId: 'demo-bank-20', measure: 'bank-delivery' }),
  })),
];

const files: readonly fc.Arbitrary<Move>[] = [
  move('exchange.take', nothing, ({ files: saved }, _, pick) => ({
    text: saved[pick(saved.length)] ?? '',
    ...{ leaveOut: [], passOverRefused: pick(2) === 0, settings: pick(2) === 0 },
  })),
  move('exchange.takeBack', nothing, ({ former }) => former ?? {}),
];

const looks: readonly fc.Arbitrary<Move>[] = [
  move('tours.legSun', nothing, ({ tours }, _, pick) => ({
    ...{ tourId: someId(tours, pick), leg: pick(2), lying: { as: 'aimed' }, by: 'day' },
  })),
  move('tours.legRide', nothing, ({ tours, scenarios }, _, pick) => ({
    ...{ tourId: someId(tours, pick), leg: pick(2), scenarioId: someId(scenarios, pick) },
  })),
  move('readings.onTour', nothing, ({ tours, scenarios }, _, pick) => ({
    ...{ tourId: someId(tours, pick), scenarioId: someId(scenarios, pick), day: 1 },
  })),
  move('items.saveCsv', nothing, ({ seen }, _, pick) => ({ ids: someIds(seen, pick) })),
];

const runId = 'a-run';

/** On the short tour, with whatever is carried by then. */
const walks: readonly fc.Arbitrary<Move>[] = [
  move('comparison.run', nothing, () => ({ runId, tourId: shortTourId, scenarioIds: null })),
  move('comparison.rank', nothing, ({ settings }) => ({
    tourId: shortTourId,
    preferences: settings.preferences,
  })),
  move('outlook.swings', nothing, ({ settings }) => ({
    ...{ runId, tourId: shortTourId, scenarioIds: null, preferences: settings.preferences },
  })),
  move('kits.search', nothing, ({ scenarios }, _, pick) => ({
    ...{ runId, tourId: shortTourId, scenarioId: someId(scenarios, pick), choices: [], limits: noLimits },
  })),
  move('upgrade.check', nothing, (view, _, pick) => ({
    ...{ runId, base: { as: 'owned' }, add: kitOf(view, pick), remove: [], tourIds: [shortTourId] },
  })),
  move('stops.plan', nothing, ({ items: all, scenarios }, _, pick) => {
    const carrying = scenarios[pick(scenarios.length)];
    return {
      ...{
        tourId: shortTourId,
        scenarioId: carrying?.id ?? goneId,
        minutes: 60,
        outlets: 1,
        hoursToWall: 24,
      },
      ...{ states: carrying === undefined ? [] : fullStates(all, carrying), use: { as: 'leg', leg: 0 } },
    };
  }),
  move('sheet.save', sheetForms, (_, form) => ({
    ...{ runId, tourId: shortTourId, scenarioIds: null, withSwings: false, form },
  })),
];

/** Every device that comes along and every bank that is carried, full. */
function fullStates(all: readonly Item[], { kit }: Scenario): readonly object[] {
  const carried = new Map(kit.map(({ itemId, quantity }) => [itemId, quantity]));
  return all.flatMap((item) => {
    const comes = item.kind === 'device' && item.state === 'owned';
    const pieces = comes ? item.quantity : item.kind === 'bank' ? (carried.get(item.id) ?? 0) : 0;
    return Array.from({ length: pieces }, (_, copy) => ({
      ...{ itemId: item.id, copy, state: { as: 'share', share: 1 } },
    }));
  });
}

/** Any call with anything, but those that change which file is the catalogue. */
const anyMove = fc
  .constantFrom(...callNames.filter((name) => !name.startsWith('catalogue.')))
  .chain((name) => move(name, anyInputOf(name), (_, input) => input));

export const anyMoves: fc.Arbitrary<readonly Move[]> = fc.array(
  fc.oneof(
    { weight: 4, arbitrary: fc.oneof(...items) },
    { weight: 4, arbitrary: fc.oneof(...plans) },
    { weight: 3, arbitrary: fc.oneof(...log) },
    { weight: 3, arbitrary: fc.oneof(...files) },
    { weight: 2, arbitrary: fc.oneof(...looks) },
    { weight: 3, arbitrary: fc.oneof(...walks) },
    { weight: 1, arbitrary: anyMove },
  ),
  { minLength: 2, maxLength: 10, size: 'max' },
);
