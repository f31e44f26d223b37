import type { Handlers } from '../../../shared-types/contract.ts';
import type { MapDesk } from '../outlook/map-desk.ts';
import type { SwingsDesk } from '../outlook/swings-desk.ts';

/** The calls that look beyond the planned tour. */
export function outlookCalls(
  maps: MapDesk,
  swings: SwingsDesk,
): Pick<Handlers, 'outlook.map' | 'outlook.rankMap' | 'outlook.swings'> {
  return {
    'outlook.swings': ({ runId, ...question }) => swings.find(runId, question),
    'outlook.map': ({ runId, ...question }) => maps.draw(runId, question),
    'outlook.rankMap': ({ preferences, ...of }) => maps.rank(of, preferences),
  };
}
