import type { Handlers } from '../../../shared-types/contract.ts';
import { failure } from '../../../shared-types/outcome.ts';
import { listItems } from '../../catalogue/items.ts';
import type { OpenedCatalogue } from '../../catalogue/open.ts';
import { listScenarios } from '../../catalogue/scenarios.ts';
import { withStorageOutcome } from '../../catalogue/storage-error.ts';
import { findTour } from '../../catalogue/tours.ts';
import { settingsOf } from '../settings-of.ts';
import { stopPlan } from '../stop-plan/stop-plan.ts';

/** The call of the stop planner. */
export function stopCalls({ read }: OpenedCatalogue): Pick<Handlers, 'stops.plan'> {
  return {
    'stops.plan': (asked) =>
      withStorageOutcome(() => {
        const tour = findTour(read, asked.tourId);
        if (tour === null) return failure('not-found', 'That tour is not in the catalogue (any more).');
        const scenario = listScenarios(read).find(({ id }) => id === asked.scenarioId);
        if (scenario === undefined)
          return failure('not-found', 'That scenario is not in the catalogue (any more).');
        const stepMinutes = Number(settingsOf(read).stepMinutes);
        return stopPlan(asked, { tour, scenario, items: listItems(read), stepMinutes });
      }),
  };
}
