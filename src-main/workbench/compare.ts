import { fliesAsPacked } from '../../shared-types/air-check.ts';
import type {
  Advice,
  Comparison,
  Remedies,
  ScenarioResult,
  ScoredRow,
} from '../../shared-types/comparison.ts';
import { fullDate } from '../../shared-types/dates.ts';
import type { KeptEstimate } from '../../shared-types/field-log.ts';
import { wordsLocale } from '../../shared-types/figures.ts';
import type { Item, ItemKind } from '../../shared-types/item.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import type { Preferences, Settings } from '../../shared-types/settings.ts';
import { tourDays, type Tour } from '../../shared-types/tour.ts';
import { meanUseWhPerDay } from '../model/flow/planned-use.ts';
import { advise } from '../model/judge/advice.ts';
import type { Situation } from '../model/judge/advised.ts';
import { cautionsFor } from '../model/judge/cautions.ts';
import type { DeviceModel } from '../model/storage/device.ts';
import { scorecard } from '../model/judge/scorecard.ts';
import { sharedAssumptions } from './assemble/assumptions.ts';
import { carriedItems, travellingDevices } from './assemble/kit.ts';
import type { TourModel } from './assemble/tour.ts';

/** What scores and sentences know of a comparison beside its results. */
export type Terms = Situation & Pick<Comparison, 'currency'>;

/** What a comparison is written from, beside its results. */
export interface Written {
  readonly items: readonly Item[];
  readonly kept: readonly KeptEstimate[];
  readonly settings: Settings;
  readonly remedies: Remedies | null;
}

/** Scores and ranks simulated scenarios, and says what to take. */
export function writeComparison(
  model: TourModel,
  results: readonly ScenarioResult[],
  scenarios: readonly Scenario[],
  { items, kept, settings, remedies }: Written,
): Comparison {
  const { seed } = settings.sky;
  const devices = travellingDevices(items, model.tour.leftAtHome);
  const terms: Terms & Pick<Comparison, 'tour'> = {
    tour: describeTour(model, devices),
    currency: settings.currency,
    histories: settings.sky.histories,
    confidence: settings.risk.confidence,
    ownsNoKit: ownsNoKit(items),
    remedies,
  };
  const { scores, advice } = judge(results, settings.preferences, terms);
  const order = new Map(scores.map((row, index) => [row.id, index]));
  return {
    ...terms,
    seed,
    advice,
    scenarios: results.toSorted((a, b) => order.get(a.id)! - order.get(b.id)!),
    scores,
    assumptions: sharedAssumptions(model, { devices, items, kept }, settings),
    cautions: cautionsFor(kindsIn(scenarios, items), {
      feedsDevices: scenarios.some(({ rules }) => rules.unsteadySource === 'device-too'),
    }),
  };
}

/** What a device is charged from or through. */
const kitKinds: readonly ItemKind[] = ['bank', 'panel', 'generator-hub', 'converter', 'wall-charger'];

function ownsNoKit(items: readonly Item[]): boolean {
  return !items.some(({ kind, state }) => state === 'owned' && kitKinds.includes(kind));
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
  terms: Terms,
): { readonly scores: readonly ScoredRow[]; readonly advice: Advice } {
  const rows = results.map(({ id, values, air }) => ({ id, values, airborne: fliesAsPacked(air) }));
  const scores = scorecard(rows, preferences, terms.currency);
  const advised = results.map((result) => ({
    ...result,
    toBuy: result.cost.toBuy,
    notConverted: result.cost.notConverted,
    carriedG: result.mass.carriedG,
    frontWheelG: result.mass.frontWheelG,
    daysWithoutWall: result.values.daysWithoutWall,
    kindsToBuy: kindsToBuy(result),
  }));
  return { scores, advice: advise(advised, scores, terms) };
}

function kindsToBuy({ mass, cost }: ScenarioResult): readonly ItemKind[] {
  const owned = new Set(cost.lines.filter((line) => line.owned).map(({ itemId }) => itemId));
  return [...new Set(mass.lines.filter(({ itemId }) => !owned.has(itemId)).map(({ kind }) => kind))];
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
