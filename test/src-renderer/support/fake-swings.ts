import type { Handlers } from '../../../shared-types/contract.ts';
import { failure, success } from '../../../shared-types/outcome.ts';
import { swingsFixture } from '../../support/swings-fixture.ts';
import type { Catalogue } from './fake-workbench.ts';

/** The same swings for any tour of the catalogue; its lead is the weight of the margin it was ranked with. */
export function fakeSwings(held: Catalogue): Pick<Handlers, 'outlook.swings'> {
  return {
    'outlook.swings': ({ tourId, preferences }) =>
      held.tours.some(({ id }) => id === tourId)
        ? success(swingsFixture({ tourId, leadPoints: preferences.margin.weight }))
        : failure('not-found', 'There is no such tour.'),
  };
}
