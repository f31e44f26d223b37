import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import { countedCriteria, type Criterion, type Preferences } from '../../../shared-types/settings.ts';
import type { OpenedCatalogue } from '../../catalogue/open.ts';
import { scenarioFlies } from '../assemble/air-lines.ts';
import { chosenScenarios, type Chosen } from '../comparison-desk.ts';
import { prepareGround } from '../prepare-ground.ts';
import type { AssumptionRange, SwingInputs } from './assumption-range.ts';
import { assumptionRanges } from './assumptions-range.ts';

/** What the caller asks the swings of. */
export interface SwingQuestion {
  readonly tourId: string;
  readonly scenarioIds: Chosen;
  readonly preferences: Preferences;
}

/** All that swings are found from. */
export interface SwingSubject {
  readonly inputs: SwingInputs;
  readonly preferences: Preferences;
  readonly counted: readonly Criterion[];
  /** The assumptions that move a figure that counts; the rest is left out. */
  readonly ranges: readonly AssumptionRange[];
  readonly leftOut: readonly AssumptionRange[];
  /** By id: nothing that the scenario packs must stay home by the air-transport rules. */
  readonly airborne: ReadonlyMap<string, boolean>;
}

/** Reads from the catalogue what swings are found from. */
export function swingSubject(catalogue: OpenedCatalogue, question: SwingQuestion): Outcome<SwingSubject> {
  const scenarios = chosenScenarios(catalogue, question.scenarioIds);
  if (!scenarios.ok) return scenarios;
  if (scenarios.value.length < 2)
    return failure('bad-input', 'With one scenario there is no order to change: compare two or more.');
  const prepared = prepareGround(catalogue, question.tourId);
  if (!prepared.ok) return prepared;
  return success(
    subjectOf({ ground: prepared.value.ground, scenarios: scenarios.value }, question.preferences),
  );
}

export function subjectOf(inputs: SwingInputs, preferences: Preferences): SwingSubject {
  const counted = countedCriteria(preferences);
  const matters = (range: AssumptionRange): boolean =>
    inputs.scenarios.some((scenario) => range.moves(scenario, inputs).some((name) => counted.includes(name)));
  return {
    inputs,
    preferences,
    counted,
    ranges: assumptionRanges.filter(matters),
    leftOut: assumptionRanges.filter((range) => !matters(range)),
    airborne: new Map(
      inputs.scenarios.map((scenario) => [scenario.id, scenarioFlies(scenario, inputs.ground)]),
    ),
  };
}

/** Two subjects with the same text have the same figures at every value; weights and limits only rank them. */
export function figuresKey({ inputs: { ground, scenarios }, counted }: SwingSubject): string {
  const { tour, items, settings } = ground;
  const { currency, stepMinutes, sky, risk, money, frontLoad } = settings;
  return JSON.stringify([
    ...[tour, scenarios, items, { currency, stepMinutes, sky, risk, money, frontLoad }],
    counted.includes('daysWithoutWall'),
  ]);
}
