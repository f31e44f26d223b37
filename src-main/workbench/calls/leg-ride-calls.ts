import type { Handlers } from '../../../shared-types/contract.ts';
import { failure } from '../../../shared-types/outcome.ts';
import { listItems } from '../../catalogue/items.ts';
import type { OpenedCatalogue } from '../../catalogue/open.ts';
import { listScenarios } from '../../catalogue/scenarios.ts';
import { readStations } from '../../catalogue/stations.ts';
import { withStorageOutcome } from '../../catalogue/storage-error.ts';
import { findTour } from '../../catalogue/tours.ts';
import { legRide } from '../leg-ride.ts';
import { longestSunshineH } from '../longest-sunshine.ts';
import { settingsOf } from '../settings-of.ts';

/** The call that shows how a leg is ridden with a scenario's kit. */
export function legRideCalls({ read }: OpenedCatalogue): Pick<Handlers, 'tours.legRide'> {
  return {
    'tours.legRide': ({ tourId, leg, scenarioId }) =>
      withStorageOutcome(() => {
        const tour = findTour(read, tourId);
        if (tour === null) return failure('not-found', 'That tour is not in the catalogue (any more).');
        const scenario = listScenarios(read).find(({ id }) => id === scenarioId);
        if (scenario === undefined)
          return failure('not-found', 'That scenario is not in the catalogue (any more).');
        return legRide(tour, leg, {
          stations: readStations(longestSunshineH),
          items: listItems(read),
          scenario,
          settings: settingsOf(read),
        });
      }),
  };
}
