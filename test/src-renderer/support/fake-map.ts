import type { BreakEvenMap } from '../../../shared-types/break-even.ts';
import type { Handlers } from '../../../shared-types/contract.ts';
import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import type { Preferences } from '../../../shared-types/settings.ts';
import { smallMap } from '../../support/map-fixture.ts';
import type { Catalogue } from './fake-workbench.ts';

/** A small map of a leg, whose finding names the weight of the margin that it was ranked with. */
export function fakeMaps(held: Catalogue): Pick<Handlers, 'outlook.map' | 'outlook.rankMap'> {
  const mapOf = (tourId: string, leg: number, { margin }: Preferences): Outcome<BreakEvenMap> => {
    const legLabel = held.tours.find(({ id }) => id === tourId)?.legs[leg]?.label;
    if (legLabel === undefined) return failure('not-found', 'There is no such leg.');
    return success(smallMap({ tourId, leg, legLabel, finding: `Ranked with ${margin.weight}` }));
  };
  return {
    'outlook.map': ({ tourId, leg }) => mapOf(tourId, leg, held.settings.preferences),
    'outlook.rankMap': ({ tourId, leg, preferences }) => mapOf(tourId, leg, preferences),
  };
}
