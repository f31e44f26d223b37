import type { Comparison } from '../../../shared-types/comparison.ts';
import type { Handlers } from '../../../shared-types/contract.ts';
import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import { mostScenariosCompared } from '../../../shared-types/scenario.ts';
import { listItems } from '../../catalogue/items.ts';
import type { OpenedCatalogue } from '../../catalogue/open.ts';
import { listScenarios } from '../../catalogue/scenarios.ts';
import { readStations } from '../../catalogue/stations.ts';
import { withStorageOutcome } from '../../catalogue/storage-error.ts';
import { findTour } from '../../catalogue/tours.ts';
import { assembleTour } from '../assemble/tour.ts';
import { compareScenarios, judge } from '../compare.ts';
import { longestSunshineH } from '../longest-sunshine.ts';
import { settingsOf } from '../settings-of.ts';

/** Which scenarios to compare: those named, or all up to the most one comparison takes. */
type Chosen = readonly string[] | null;

export type RunComparison = (tourId: string, scenarioIds: Chosen) => Outcome<Comparison>;

/** Reads what a comparison needs from the catalogue and runs it. */
export function comparisonRunner({ read }: OpenedCatalogue): RunComparison {
  return (tourId, scenarioIds) =>
    withStorageOutcome(() => {
      const tour = findTour(read, tourId);
      if (tour === null) return failure('not-found', 'That tour is not in the catalogue (any more).');
      const all = listScenarios(read);
      const missing = scenarioIds?.find((id) => all.every((scenario) => scenario.id !== id));
      if (missing !== undefined) {
        return failure('not-found', `The scenario ${missing} is not in the catalogue (any more).`);
      }
      const chosen = all
        .filter(({ id }) => scenarioIds === null || scenarioIds.includes(id))
        .slice(0, mostScenariosCompared);
      const settings = settingsOf(read);
      const model = assembleTour(tour, readStations(longestSunshineH), settings);
      if ('unknownStationInLeg' in model) {
        return failure(
          'not-found',
          `Leg ${model.unknownStationInLeg + 1} names a climate station that is not in the list.`,
        );
      }
      return success(compareScenarios(model, chosen, listItems(read), settings));
    });
}

/**
 * The comparison calls. The last results of a tour are kept, so that changed weights re-rank without a simulation.
 */
export function comparisonCalls(run: RunComparison): Pick<Handlers, 'comparison.run' | 'comparison.rank'> {
  let last: Comparison | null = null;
  const fresh = (tourId: string, scenarioIds: Chosen): Outcome<Comparison> => {
    const outcome = run(tourId, scenarioIds);
    if (outcome.ok) last = outcome.value;
    return outcome;
  };
  return {
    'comparison.run': ({ tourId, scenarioIds }) => fresh(tourId, scenarioIds),
    'comparison.rank': ({ tourId, preferences }) => {
      const ran = last?.tour.id === tourId ? success(last) : fresh(tourId, null);
      return ran.ok ? success(judge(ran.value.scenarios, preferences)) : ran;
    },
  };
}
