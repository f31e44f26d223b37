import type { Advice, Comparison, ScenarioResult, ScoredRow } from '../../shared-types/comparison.ts';
import { fullDate } from '../../shared-types/dates.ts';
import { wordsLocale } from '../../shared-types/figures.ts';
import type { Item, ItemKind } from '../../shared-types/item.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import type { Preferences, Settings } from '../../shared-types/settings.ts';
import { tourDays, type Tour } from '../../shared-types/tour.ts';
import { meanUseWhPerDay } from '../model/flow/planned-use.ts';
import { advise } from '../model/judge/advice.ts';
import { cautionsFor } from '../model/judge/cautions.ts';
import type { DeviceModel } from '../model/storage/device.ts';
import { scorecard } from '../model/judge/scorecard.ts';
import { sharedAssumptions } from './assemble/assumptions.ts';
import { carriedItems, travellingDevices } from './assemble/kit.ts';
import type { TourModel } from './assemble/tour.ts';

/** How surely the figures of a comparison are known. */
export type Certainty = Pick<Comparison, 'histories' | 'confidence'>;

/** Scores and ranks simulated scenarios, and says what to take. */
export function writeComparison(
  model: TourModel,
  results: readonly ScenarioResult[],
  scenarios: readonly Scenario[],
  items: readonly Item[],
  settings: Settings,
): Comparison {
  const { histories, seed } = settings.sky;
  const { confidence } = settings.risk;
  const { scores, advice } = judge(results, settings.preferences, { histories, confidence });
  const devices = travellingDevices(items, model.tour.leftAtHome);
  const order = new Map(scores.map((row, index) => [row.id, index]));
  return {
    tour: describeTour(model, devices),
    currency: settings.currency,
    ...{ histories, seed, confidence },
    advice,
    scenarios: results.toSorted((a, b) => order.get(a.id)! - order.get(b.id)!),
    scores,
    assumptions: sharedAssumptions(model, devices, settings),
    cautions: cautionsFor(kindsIn(scenarios, items), {
      feedsDevices: scenarios.some(({ rules }) => rules.unsteadySource === 'device-too'),
    }),
  };
}

function kindsIn(scenarios: readonly Scenario[], items: readonly Item[]): ReadonlySet<ItemKind> {
  return new Set<ItemKind>([
    'device',
    ...scenarios.flatMap((scenario) => carriedItems(scenario, items).map(({ item }) => item.kind)),
  ]);
}

/** Ranks results already simulated and writes the answer anew. */
export function judge(
  results: readonly ScenarioResult[],
  preferences: Preferences,
  certainty: Certainty,
): { readonly scores: readonly ScoredRow[]; readonly advice: Advice } {
  const scores = scorecard(results, preferences);
  const advised = results.map((result) => ({
    ...result,
    toBuy: result.cost.toBuy,
    notConverted: result.cost.notConverted,
    carriedG: result.mass.carriedG,
    frontWheelG: result.mass.frontWheelG,
  }));
  return { scores, advice: advise(advised, scores, certainty) };
}

function describeTour(model: TourModel, devices: readonly DeviceModel[]): Comparison['tour'] {
  const { tour, timeline } = model;
  return {
    id: tour.id,
    label: tour.label,
    summary: summary(
      tour,
      timeline.wallAfterDay.reduce((sum, wall) => sum + wall, 0),
    ),
    startDate: tour.startDate,
    days: timeline.days,
    demandWhPerDay: meanUseWhPerDay(devices, timeline),
  };
}

function summary(tour: Tour, wallNights: number): string {
  const days = tourDays(tour);
  return `${days} ${days === 1 ? 'day' : 'days'} from ${fullDate(tour.startDate, wordsLocale)}, a wall on ${wallNights} of ${days} nights`;
}
