import type {
  Lasting,
  OnTour,
  OnTourQuestion,
  StoreNow,
  SwitchOff,
} from '../../../shared-types/field-log.ts';
import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import type { Reading } from '../../../shared-types/reading.ts';
import type { Scenario } from '../../../shared-types/scenario.ts';
import { walkOn } from '../../model/field-log/walk-on.ts';
import { createState } from '../../model/flow/step-state.ts';
import { massOf } from '../../model/judge/mass.ts';
import { frontShares } from '../../model/judge/front-load.ts';
import { percentile } from '../../model/percentile.ts';
import { carriedItems } from '../assemble/kit.ts';
import { weighedLines } from '../assemble/money-and-mass.ts';
import { drawComparedTour } from '../compared-tour.ts';
import type { ComparisonGround } from '../ground.ts';
import { readyScenario, type ReadyScenario } from '../simulate-scenario.ts';
import { stopKit } from '../stop-plan/stop-kit.ts';
import { assumedOnTour } from './on-tour-words.ts';
import { otherUses } from './other-uses.ts';
import { nextWall, placeOnTour } from './place-on-tour.ts';
import { storedToday } from './stored-today.ts';

/** What an answer on the road is made from. */
export interface OnTourSources {
  readonly ground: Pick<ComparisonGround, 'tour' | 'stations' | 'items' | 'settings'>;
  readonly scenario: Scenario;
  readonly readings: readonly Reading[];
  readonly today: string;
  /** Hour of the rider's day, 0..24. */
  readonly hour: number;
}

/** So many courses of weather and use tell days well enough, and the answer is there at once. */
const mostHistories = 40;
/** Which of them stand for low, usual and good. */
const [lowShare, usualShare, goodShare] = [0.1, 0.5, 0.9] as const;

/** How long the must-haves last on what is stored now, sun and hub included and walls not. */
export function onTour(asked: OnTourQuestion, sources: OnTourSources): Outcome<OnTour> {
  const { ground, scenario, readings, today, hour } = sources;
  const { tour, items } = ground;
  const place = placeOnTour(tour, asked.day, today);
  if (place === null)
    return failure('bad-input', 'day: allowed is a day of the tour.', [
      { path: 'day', allowed: 'a day of the tour', got: String(asked.day) },
    ]);
  const ready = laidOut(sources);
  if (ready === null) return failure('not-found', 'A leg names a climate station that is not in the list.');
  const step = Math.floor((place.day - 1 + hour / hoursADay) * ready.course.stepsPerDay);
  const stores = storedToday(stopKit(tour, scenario, items).pieces, items, readings, today);
  const walker = walkerOf(ready, stores, step);
  const usual = walker.walk('usualWh', nothingOff);
  return success({
    day: place.day,
    tourDays: place.tourDays,
    low: walker.lasting(walker.walk('lowWh', nothingOff).steps, lowShare),
    usual: walker.lasting(usual.steps, usualShare),
    good: walker.lasting(walker.walk('highWh', nothingOff).steps, goodShare),
    flatFirst: mostOften(usual.flat.map((device) => ready.network.devices[device]!.label)),
    wall: nextWall(tour, ground.settings, step),
    switchOff: switchOffs(ready, walker, walker.lasting(usual.steps, usualShare)),
    stores,
    assumed: assumedOnTour({ place, stores, otherUses: otherUses(items, readings) }),
  });
}

const hoursADay = 24;
const nothingOff = -1;

/** The rest of the tour without a charger, so that no wall is counted on, and with no nice-to-have held back. */
function laidOut({ ground, scenario }: OnTourSources): ReadyScenario | null {
  const { tour, stations, items, settings } = ground;
  const histories = Math.min(settings.sky.histories, mostHistories);
  const drawn = drawComparedTour(tour, stations, items, { ...settings, sky: { ...settings.sky, histories } });
  if ('unknownStationInLeg' in drawn) return null;
  const lines = carriedItems(scenario, items);
  const { carriedG } = massOf(weighedLines(lines), frontShares(settings.frontLoad));
  const served: Scenario = { ...scenario, rules: { ...scenario.rules, whenShort: 'serve-all' } };
  const withoutWall = lines.filter(({ item }) => item.kind !== 'wall-charger');
  return readyScenario(served, drawn, withoutWall, carriedG);
}

type Level = 'lowWh' | 'usualWh' | 'highWh';

interface Walked {
  /** By history, rising: steps until the first must-have is flat. */
  readonly steps: readonly number[];
  /** By history in which one ran flat: which device. */
  readonly flat: readonly number[];
}

interface Walker {
  walk(level: Level, off: number): Walked;
  lasting(steps: readonly number[], share: number): Lasting;
}

function walkerOf(
  { network, course, histories }: ReadyScenario,
  stores: readonly StoreNow[],
  step: number,
): Walker {
  const state = createState(network, course.steps);
  const byKey = new Map(stores.map((store) => [`${store.itemId}#${store.copy}`, store]));
  const keys = [...network.devices, ...network.banks].map(({ key }) => key);
  const left = course.steps - step;
  return {
    walk: (level, off) => {
      const from = { step, storedWh: Float64Array.from(keys, (key) => byKey.get(key)?.[level] ?? 0) };
      const flat: number[] = [];
      const steps = histories.map((draws) => {
        const walked = walkOn(network, course, draws, from, off, state);
        if (state.flatDevice >= 0) flat.push(state.flatDevice);
        return walked;
      });
      return { steps: steps.toSorted((a, b) => a - b), flat };
    },
    lasting: (steps, share) => {
      const at = percentile(steps, share);
      return { days: at / course.stepsPerDay, toTheEnd: at >= left };
    },
  };
}

function mostOften(labels: readonly string[]): string | null {
  const times = (label: string): number => labels.filter((each) => each === label).length;
  return [...new Set(labels)].sort((a, b) => times(b) - times(a))[0] ?? null;
}

/** Less is no gain that a rider can plan with, days. */
const noticeableDays = 0.1;

/** The nice-to-have, then the must-have, that buys most days when it alone is switched off. */
function switchOffs({ network }: ReadyScenario, walker: Walker, plain: Lasting): readonly SwitchOff[] {
  if (plain.toTheEnd) return [];
  const gains = network.devices.map(({ label, mustHave }, device): SwitchOff => {
    const { days, toTheEnd } = walker.lasting(walker.walk('usualWh', device).steps, usualShare);
    return { label, role: mustHave ? 'must-have' : 'nice-to-have', days: days - plain.days, toTheEnd };
  });
  const best = (role: SwitchOff['role']): readonly SwitchOff[] =>
    gains
      .filter((gain) => gain.role === role && gain.days >= noticeableDays)
      .sort((a, b) => b.days - a.days)
      .slice(0, 1);
  return [...best('nice-to-have'), ...best('must-have')];
}
