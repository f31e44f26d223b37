import type { Handlers } from '../../../shared-types/contract.ts';
import type { OpenedCatalogue } from '../../catalogue/open.ts';
import { readStations } from '../../catalogue/stations.ts';
import { withStorageOutcome } from '../../catalogue/storage-error.ts';
import { longestSunshineH } from '../longest-sunshine.ts';
import { addReadyMade, bringDemoBack, startOwn } from '../own-start.ts';

type StartCalls = Pick<Handlers, 'start.own' | 'start.demo' | 'scenarios.addReadyMade'>;

/** The calls that lay several rows at once for a rider who begins. */
export function startCalls({ write }: OpenedCatalogue): StartCalls {
  return {
    'start.own': ({ own }) => withStorageOutcome(() => startOwn(write, own, readStations(longestSunshineH))),
    'start.demo': () => withStorageOutcome(() => bringDemoBack(write)),
    'scenarios.addReadyMade': () => withStorageOutcome(() => addReadyMade(write)),
  };
}
