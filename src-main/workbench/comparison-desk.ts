import type { Comparison } from '../../shared-types/comparison.ts';
import { failure, success, type Outcome } from '../../shared-types/outcome.ts';
import { mostScenariosCompared, type Scenario } from '../../shared-types/scenario.ts';
import type { OpenedCatalogue } from '../catalogue/open.ts';
import { listScenarios } from '../catalogue/scenarios.ts';
import { withStorageOutcome } from '../catalogue/storage-error.ts';
import type { TourModel } from './assemble/tour.ts';
import { writeComparison } from './compare.ts';
import type { Crew } from './crew.ts';
import type { ComparisonGround } from './ground.ts';
import { keepResults, type KeptResults, type WalkedComparison } from './kept-results.ts';
import { prepareGround } from './prepare-ground.ts';
import { remediesOf, startTrial, trialOf } from './remedies.ts';
import type { LongRun, RunBook } from './run-book.ts';

/** Which scenarios to compare: those named, or all up to the most one comparison takes. */
export type Chosen = readonly string[] | null;

/** Runs comparisons under the names their callers gave them; the walks of the last one are kept. */
export interface ComparisonDesk {
  run(runId: string, tourId: string, scenarioIds: Chosen): Promise<Outcome<Comparison>>;
}

/** Everything a comparison is made from, read from the catalogue at once. */
interface Prepared {
  readonly model: TourModel;
  readonly scenarios: readonly Scenario[];
  readonly ground: ComparisonGround;
}

export function createComparisonDesk(catalogue: OpenedCatalogue, crew: Crew, book: RunBook): ComparisonDesk {
  const last = keepResults();
  return {
    run: async (runId, tourId, scenarioIds) => {
      const prepared = withStorageOutcome(() => prepare(catalogue, tourId, scenarioIds));
      if (!prepared.ok) return prepared;
      const walked = last.of(prepared.value.ground, prepared.value.scenarios);
      if (walked !== null) return success(written(prepared.value, walked));
      return book.enter(runId, (onShare) => carryOut(prepared.value, crew, last, onShare));
    },
  };
}

/** Simulates all scenarios; where none carries the plan, tries what would. */
function carryOut(
  prepared: Prepared,
  crew: Crew,
  last: KeptResults,
  onProgress: (share: number) => void,
): LongRun<Comparison> {
  const { scenarios, ground } = prepared;
  const done = (walked: WalkedComparison): Outcome<Comparison> => {
    last.keep(ground, scenarios, walked);
    return success(written(prepared, walked));
  };
  const inputs = scenarios.map((scenario) => ({ ground, scenario }));
  const run = crew.start('scenario', inputs, { onProgress });
  let underWay: Pick<typeof run, 'cancel'> = run;
  const answer = async (): Promise<Outcome<Comparison>> => {
    const results = await run.results;
    if (results === null) return cancelled;
    const trial = trialOf(ground, scenarios, results);
    if (trial === null) return done({ results, remedies: null });
    const tried = startTrial(ground, trial, crew);
    underWay = tried;
    const figures = await tried.results;
    if (figures === null) return cancelled;
    return done({ results, remedies: remediesOf(trial, figures) });
  };
  return { answer: answer(), cancel: () => underWay.cancel() };
}

const cancelled = failure('cancelled', 'The comparison was cancelled.');

function written(
  { model, scenarios, ground: { items, kept, settings } }: Prepared,
  { results, remedies }: WalkedComparison,
): Comparison {
  return writeComparison(model, results, scenarios, { items, kept, settings, remedies });
}

function prepare(catalogue: OpenedCatalogue, tourId: string, scenarioIds: Chosen): Outcome<Prepared> {
  const scenarios = chosenScenarios(catalogue, scenarioIds);
  if (!scenarios.ok) return scenarios;
  const prepared = prepareGround(catalogue, tourId);
  return prepared.ok ? success({ ...prepared.value, scenarios: scenarios.value }) : prepared;
}

/** The scenarios named, or all, as many as one comparison takes. */
export function chosenScenarios(
  { read }: OpenedCatalogue,
  scenarioIds: Chosen,
): Outcome<readonly Scenario[]> {
  const all = listScenarios(read);
  const missing = scenarioIds?.find((id) => all.every((scenario) => scenario.id !== id));
  if (missing !== undefined)
    return failure('not-found', `The scenario ${missing} is not in the catalogue (any more).`);
  return success(
    all.filter(({ id }) => scenarioIds === null || scenarioIds.includes(id)).slice(0, mostScenariosCompared),
  );
}
