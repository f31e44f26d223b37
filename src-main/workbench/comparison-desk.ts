import { randomUUID } from 'node:crypto';
import type { Comparison } from '../../shared-types/comparison.ts';
import { failure, success, type Outcome } from '../../shared-types/outcome.ts';
import { mostScenariosCompared, type Scenario } from '../../shared-types/scenario.ts';
import { listItems } from '../catalogue/items.ts';
import type { OpenedCatalogue } from '../catalogue/open.ts';
import { listScenarios } from '../catalogue/scenarios.ts';
import { readStations } from '../catalogue/stations.ts';
import { withStorageOutcome } from '../catalogue/storage-error.ts';
import { findTour } from '../catalogue/tours.ts';
import { assembleTour, type TourModel } from './assemble/tour.ts';
import { writeComparison } from './compare.ts';
import { longestSunshineH } from './longest-sunshine.ts';
import type { ComparisonGround } from './scenario-job.ts';
import { settingsOf } from './settings-of.ts';
import type { SimulatedRun, Simulator } from './simulator.ts';

/** Which scenarios to compare: those named, or all up to the most one comparison takes. */
export type Chosen = readonly string[] | null;

/** Runs comparisons, and knows those under way by the names their callers gave them. */
export interface ComparisonDesk {
  run(runId: string, tourId: string, scenarioIds: Chosen): Promise<Outcome<Comparison>>;
  /** How far a run is, 0..1; null when none of that name is under way. */
  progress(runId: string): number | null;
  /** @returns whether there was anything to cancel */
  cancel(runId: string): boolean;
}

interface Running {
  readonly run: SimulatedRun;
  share: number;
}

/** Everything a comparison is made from, read from the catalogue at once. */
interface Prepared {
  readonly model: TourModel;
  readonly scenarios: readonly Scenario[];
  readonly ground: ComparisonGround;
}

export function createComparisonDesk(catalogue: OpenedCatalogue, simulator: Simulator): ComparisonDesk {
  const running = new Map<string, Running>();
  return {
    run: async (runId, tourId, scenarioIds) => {
      if (running.has(runId)) return failure('in-use', `A run named ${runId} is under way already.`);
      const prepared = withStorageOutcome(() => prepare(catalogue, tourId, scenarioIds));
      return prepared.ok ? carryOut(runId, prepared.value, simulator, running) : prepared;
    },
    progress: (runId) => running.get(runId)?.share ?? null,
    cancel: (runId) => {
      const known = running.get(runId);
      known?.run.cancel();
      return known !== undefined;
    },
  };
}

async function carryOut(
  runId: string,
  { model, scenarios, ground }: Prepared,
  simulator: Simulator,
  running: Map<string, Running>,
): Promise<Outcome<Comparison>> {
  const { items, settings } = ground;
  const run = simulator.start(ground, scenarios, (share) => {
    const known = running.get(runId);
    if (known !== undefined) known.share = share;
  });
  running.set(runId, { run, share: 0 });
  try {
    const results = await run.results;
    return results === null
      ? failure('cancelled', 'The comparison was cancelled.')
      : success(writeComparison(model, results, scenarios, items, settings));
  } finally {
    running.delete(runId);
  }
}

function prepare({ read }: OpenedCatalogue, tourId: string, scenarioIds: Chosen): Outcome<Prepared> {
  const tour = findTour(read, tourId);
  if (tour === null) return failure('not-found', 'That tour is not in the catalogue (any more).');
  const all = listScenarios(read);
  const missing = scenarioIds?.find((id) => all.every((scenario) => scenario.id !== id));
  if (missing !== undefined)
    return failure('not-found', `The scenario ${missing} is not in the catalogue (any more).`);
  const scenarios = all
    .filter(({ id }) => scenarioIds === null || scenarioIds.includes(id))
    .slice(0, mostScenariosCompared);
  const [settings, stations] = [settingsOf(read), readStations(longestSunshineH)];
  const model = assembleTour(tour, stations, settings);
  if ('unknownStationInLeg' in model)
    return failure(
      'not-found',
      `Leg ${model.unknownStationInLeg + 1} names a climate station that is not in the list.`,
    );
  // Not the caller's name, which may come again: a worker keeps the tour it drew for a run.
  const ground = { runId: randomUUID(), tour, items: listItems(read), stations, settings };
  return success({ model, scenarios, ground });
}
