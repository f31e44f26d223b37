import type { Handlers } from '../../../shared-types/contract.ts';
import { failure } from '../../../shared-types/outcome.ts';
import { listItems } from '../../catalogue/items.ts';
import type { OpenedCatalogue } from '../../catalogue/open.ts';
import { listScenarios } from '../../catalogue/scenarios.ts';
import { readStations } from '../../catalogue/stations.ts';
import { withStorageOutcome } from '../../catalogue/storage-error.ts';
import { findTour } from '../../catalogue/tours.ts';
import { legSun } from '../leg-sun.ts';
import { longestSunshineH } from '../longest-sunshine.ts';
import { settingsOf } from '../settings-of.ts';

/** The call that shows the sun of a leg. */
export function legSunCalls({ read }: OpenedCatalogue): Pick<Handlers, 'tours.legSun'> {
  return {
    'tours.legSun': ({ tourId, leg, lying, by }) =>
      withStorageOutcome(() => {
        const tour = findTour(read, tourId);
        if (tour === null) return failure('not-found', 'That tour is not in the catalogue (any more).');
        return legSun(tour, leg, lying, by, {
          stations: readStations(longestSunshineH),
          items: listItems(read),
          scenarios: listScenarios(read),
          settings: settingsOf(read),
        });
      }),
  };
}
