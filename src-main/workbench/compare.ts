import type { Advice, Comparison, ScenarioResult, ScoredRow } from '../../shared-types/comparison.ts';
import { fullDate } from '../../shared-types/dates.ts';
import { wordsLocale } from '../../shared-types/figures.ts';
import type { Item, ItemKind } from '../../shared-types/item.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import type { Preferences, Settings } from '../../shared-types/settings.ts';
import { tourDays, type Tour } from '../../shared-types/tour.ts';
import { meanDemandWhPerDay } from '../model/flow/demand.ts';
import { advise } from '../model/judge/advice.ts';
import { cautionsFor } from '../model/judge/cautions.ts';
import type { DeviceModel } from '../model/storage/device.ts';
import { scorecard } from '../model/judge/scorecard.ts';
import { sharedAssumptions } from './assemble/assumptions.ts';
import { carriedItems, travellingDevices } from './assemble/kit.ts';
import type { TourModel } from './assemble/tour.ts';
import { compareScenario } from './compare-scenario.ts';

/** One course of energy is simulated: what the panels give is its mean over the drawn skies. */
const histories = 1;

/** Simulates a tour under each scenario, scores and ranks them, and says what to take. */
export function compareScenarios(
  model: TourModel,
  scenarios: readonly Scenario[],
  items: readonly Item[],
  settings: Settings,
): Comparison {
  const results = scenarios.map((scenario) => compareScenario(scenario, model, items, settings.currency));
  const { scores, advice } = judge(results, settings.preferences);
  const devices = travellingDevices(items, model.tour.leftAtHome);
  const order = new Map(scores.map((row, index) => [row.id, index]));
  const kinds = new Set<ItemKind>([
    'device',
    ...scenarios.flatMap((scenario) => carriedItems(scenario, items).map(({ item }) => item.kind)),
  ]);
  return {
    tour: describeTour(model, devices),
    currency: settings.currency,
    histories,
    seed: settings.sky.seed,
    advice,
    scenarios: results.toSorted((a, b) => order.get(a.id)! - order.get(b.id)!),
    scores,
    assumptions: sharedAssumptions(model, devices, settings.sky),
    cautions: cautionsFor(kinds),
  };
}

/** Ranks results already simulated and writes the answer anew. */
export function judge(
  results: readonly ScenarioResult[],
  preferences: Preferences,
): { readonly scores: readonly ScoredRow[]; readonly advice: Advice } {
  const scores = scorecard(results, preferences);
  const advised = results.map((result) => ({
    ...result,
    toBuy: result.cost.toBuy,
    notConverted: result.cost.notConverted,
    carriedG: result.mass.carriedG,
    frontWheelG: result.mass.frontWheelG,
  }));
  return { scores, advice: advise(advised, scores, histories) };
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
    demandWhPerDay: meanDemandWhPerDay(devices, timeline),
  };
}

function summary(tour: Tour, wallNights: number): string {
  const days = tourDays(tour);
  return `${days} ${days === 1 ? 'day' : 'days'} from ${fullDate(tour.startDate, wordsLocale)}, a wall on ${wallNights} of ${days} nights`;
}
