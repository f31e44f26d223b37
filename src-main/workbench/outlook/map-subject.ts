import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import type { Scenario } from '../../../shared-types/scenario.ts';
import type { Settings } from '../../../shared-types/settings.ts';
import type { OpenedCatalogue } from '../../catalogue/open.ts';
import { chosenScenarios, type Chosen } from '../comparison-desk.ts';
import type { ComparisonGround } from '../ground.ts';
import { prepareGround } from '../prepare-ground.ts';

/** What the caller asks a map of. */
export interface MapQuestion {
  readonly tourId: string;
  /** Counts from 0. */
  readonly leg: number;
  readonly scenarioIds: Chosen;
}

/** All that a map is drawn from. */
export interface MapSubject {
  /** Of the whole tour, as it is stored. */
  readonly ground: ComparisonGround;
  readonly leg: number;
  readonly scenarios: readonly Scenario[];
}

/** Reads from the catalogue what a map is drawn from. */
export function mapSubject(catalogue: OpenedCatalogue, question: MapQuestion): Outcome<MapSubject> {
  const scenarios = chosenScenarios(catalogue, question.scenarioIds);
  if (!scenarios.ok) return scenarios;
  const prepared = prepareGround(catalogue, question.tourId);
  if (!prepared.ok) return prepared;
  const { ground } = prepared.value;
  if (ground.tour.legs[question.leg] === undefined)
    return failure('not-found', `The tour has no leg ${question.leg + 1} (any more).`);
  if (scenarios.value.length === 0)
    return failure('not-found', 'There is no scenario to put on the map: put one together first.');
  return success({ ground, leg: question.leg, scenarios: scenarios.value });
}

/** Two subjects with the same text have the same figures everywhere on the map; weights and limits only rank them. */
export function figuresKey({ ground, leg, scenarios }: MapSubject): string {
  const { tour, items, settings, sunScale } = ground;
  return JSON.stringify([tour, leg, scenarios, items, figureSettings(settings), sunScale]);
}

type FigureSettings = Omit<
  Settings,
  'preferences' | 'theme' | 'units' | 'numberFormat' | 'letterKeys' | 'paper' | 'tourId'
>;

function figureSettings({
  currency,
  stepMinutes,
  sky,
  risk,
  money,
  frontLoad,
}: FigureSettings): FigureSettings {
  return { currency, stepMinutes, sky, risk, money, frontLoad };
}
