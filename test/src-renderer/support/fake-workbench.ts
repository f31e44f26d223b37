import { answer } from '../../../shared-types/answer.ts';
import type { CallName, Handlers, Invoke } from '../../../shared-types/contract.ts';
import type { Item } from '../../../shared-types/item.ts';
import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import type { Scenario } from '../../../shared-types/scenario.ts';
import type { Settings } from '../../../shared-types/settings.ts';
import type { Tour } from '../../../shared-types/tour.ts';
import { demoItems, demoScenarios, demoSettings, demoTours } from '../../../db/demo/demo.ts';
import { fakeComparison, fakeScores } from './fake-comparison.ts';
import { fakeCsv } from './fake-csv.ts';
import { fakeExchange } from './fake-exchange.ts';
import { fakeLegRide } from './fake-leg-ride.ts';
import { fakeLegSun } from './fake-leg-sun.ts';
import { fakeKits } from './fake-kits.ts';
import { fakeMaps } from './fake-map.ts';
import { fakeStart } from './fake-start.ts';
import { FakePlace } from './fake-place.ts';
import { fakeReadings } from './fake-readings.ts';
import { fakeStops } from './fake-stops.ts';
import { fakeSwings } from './fake-swings.ts';
import { fakeTracks } from './fake-tracks.ts';
import { fakeUpgrade } from './fake-upgrade.ts';

/** What the fake holds in memory; a test may look into it and change it. */
export interface Catalogue {
  items: Item[];
  tours: Tour[];
  scenarios: Scenario[];
  settings: Settings;
}

export function demoCatalogue(): Catalogue {
  return {
    items: [...demoItems],
    tours: [...demoTours],
    scenarios: [...demoScenarios],
    settings: demoSettings,
  };
}

function put<Row extends { readonly id: string }>(rows: Row[], row: Row): Outcome<Row> {
  const place = rows.findIndex(({ id }) => id === row.id);
  if (place === -1) rows.push(row);
  else rows[place] = row;
  return success(row);
}

function take<Row extends { readonly id: string }>(rows: Row[], id: string): Outcome<Row> {
  const place = rows.findIndex((row) => row.id === id);
  const [row] = place === -1 ? [] : rows.splice(place, 1);
  return row === undefined ? failure('not-found', `Nothing has the id ${id}.`) : success(row);
}

/** What the fake knows of the runs asked of it. */
interface Runs {
  /** What it answers to whoever asks how far a run is. */
  share: number | null;
  readonly cancelled: Set<string>;
}

function handlersOf(held: Catalogue, runs: Runs, place: FakePlace): Handlers {
  let made = 0;
  const fresh = (): string => `made-${++made}`;
  const compare = (tourId: string, ids: readonly string[] | null) => {
    const tour = held.tours.find(({ id }) => id === tourId);
    if (tour === undefined) return null;
    const scenarios = held.scenarios.filter(({ id }) => ids === null || ids.includes(id));
    return fakeComparison(tour, scenarios, held.items, held.settings);
  };
  const noTour = failure('not-found', 'There is no such tour.');
  return {
    about: () =>
      success({
        version: '0.1.0',
        host: 'loopback',
        dataFolder: 'a folder',
        climateCredit: 'invented',
        climateSources: [{ code: 'A', what: 'invented' }],
      }),
    ...place.handlers,
    'items.list': () => success([...held.items]),
    'items.save': ({ id = fresh(), item }) => put(held.items, { ...item, id }),
    'items.setState': ({ id, state }) => {
      const item = held.items.find((each) => each.id === id);
      if (item === undefined) return failure('not-found', 'There is no such item.');
      return put(held.items, { ...item, state });
    },
    'items.remove': ({ ids }) => {
      const carrying = held.scenarios.find(({ kit }) => kit.some(({ itemId }) => ids.includes(itemId)));
      if (carrying !== undefined) return failure('in-use', `The scenario ${carrying.label} carries it.`);
      const removed = held.items.filter(({ id }) => ids.includes(id));
      held.items = held.items.filter(({ id }) => !ids.includes(id));
      return success(removed);
    },
    'items.putBack': ({ items }) => {
      const back = items.map(({ id, item }): Item => ({ ...item, id }));
      for (const item of back) put(held.items, item);
      return success(back);
    },
    'items.setStates': ({ changes }) => {
      const moved = changes.map(({ id, state }) => ({
        ...held.items.find((item) => item.id === id)!,
        state,
      }));
      for (const item of moved) put(held.items, item);
      return success(moved);
    },
    ...fakeCsv(held, fresh),
    ...fakeExchange(held, fresh),
    'tours.list': () => success([...held.tours]),
    'tours.save': ({ id = fresh(), tour }) => put(held.tours, { ...tour, id }),
    'tours.remove': ({ id }) => take(held.tours, id),
    ...fakeTracks(),
    'tours.legSun': ({ tourId, leg, by }) => {
      const tour = held.tours.find(({ id }) => id === tourId);
      const sun = tour === undefined ? null : fakeLegSun(tour, leg, held.items, by);
      return sun === null ? failure('not-found', 'There is no such leg.') : success(sun);
    },
    'tours.legRide': ({ tourId, leg, scenarioId }) => {
      const tour = held.tours.find(({ id }) => id === tourId);
      const scenario = held.scenarios.find(({ id }) => id === scenarioId);
      if (tour === undefined || scenario === undefined) return failure('not-found', 'There is no such leg.');
      const ride = fakeLegRide(tour, leg, scenario, held.items);
      return ride === null ? failure('not-found', 'There is no such leg.') : success(ride);
    },
    'scenarios.list': () => success([...held.scenarios]),
    'scenarios.save': ({ id = fresh(), scenario }) => put(held.scenarios, { ...scenario, id }),
    'scenarios.remove': ({ id }) => take(held.scenarios, id),
    'settings.get': () => success(held.settings),
    'settings.save': ({ settings }) => success((held.settings = settings)),
    'stations.list': () => success([]),
    'comparison.run': ({ tourId, scenarioIds }) => {
      const comparison = compare(tourId, scenarioIds);
      return comparison === null ? noTour : success(comparison);
    },
    'runs.progress': () => success({ share: runs.share }),
    'runs.cancel': ({ runId }) => {
      runs.cancelled.add(runId);
      return success({ cancelled: true });
    },
    'comparison.rank': ({ tourId, preferences }) => {
      const comparison = compare(tourId, null);
      if (comparison === null) return noTour;
      const scores = fakeScores(comparison.scenarios, preferences);
      return success({ scores, advice: { ...comparison.advice, why: 'Ranked anew.' } });
    },
    ...fakeSwings(held),
    ...fakeMaps(held),
    ...fakeKits(),
    ...fakeUpgrade(held),
    ...fakeStops(held),
    ...fakeReadings(held),
    ...fakeStart(held, fresh),
    'sheet.save': ({ form }) =>
      success({
        as: 'download',
        fileName: `sheet.${form.as}`,
        mediaType: 'text/plain',
        base64: btoa('sheet'),
      }),
    'files.choose': () => success({ as: 'ask-page' }),
  };
}

/** The calls whose runs have a name and can be stopped. */
const longCalls: ReadonlySet<CallName> = new Set([
  'comparison.run',
  'outlook.swings',
  'outlook.map',
  'upgrade.check',
]);

/** The workbench's calls over a catalogue in memory, parsed and refused by the real contract. */
export class FakeWorkbench {
  readonly catalogue: Catalogue;
  /** Every call made, in order. */
  readonly calls: { readonly name: CallName; readonly input: unknown }[] = [];
  readonly invoke: Invoke;
  readonly place = new FakePlace();
  readonly runs: Runs = { share: null, cancelled: new Set() };
  readonly #held: { readonly name: CallName; readonly release: () => void }[] = [];
  #holding: CallName | null = null;

  constructor(catalogue: Catalogue = demoCatalogue()) {
    this.catalogue = catalogue;
    const handlers = handlersOf(catalogue, this.runs, this.place);
    const invoke = async (name: CallName, input: unknown): Promise<unknown> => {
      this.calls.push({ name, input });
      const outcome = await answer(handlers, name, structuredClone(input), (_, fault) => {
        throw fault;
      });
      if (this.#holding === name) {
        await new Promise<void>((release) => this.#held.push({ name, release }));
      }
      return this.#stopped(name, input) ? failure('cancelled', 'The run was stopped.') : outcome;
    };
    this.invoke = invoke as Invoke;
  }

  #stopped(name: CallName, input: unknown): boolean {
    return longCalls.has(name) && this.runs.cancelled.has((input as { readonly runId: string }).runId);
  }

  /** Answers to this call are kept back, until `release` lets them go in an order of the test's choosing. */
  hold(name: CallName): void {
    this.#holding = name;
  }

  /** Lets the kept answer at this place go; places do not shift. */
  release(place: number): void {
    this.#held[place]?.release();
  }

  count(name: CallName): number {
    return this.calls.filter((call) => call.name === name).length;
  }
}
