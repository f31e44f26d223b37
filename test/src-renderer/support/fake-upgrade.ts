import type { Handlers } from '../../../shared-types/contract.ts';
import { failure, success } from '../../../shared-types/outcome.ts';
import { upgradeFixture } from '../../support/upgrade-fixture.ts';
import type { Catalogue } from './fake-workbench.ts';

/** The same answer to any change, which names the items that come in. */
export function fakeUpgrade(held: Catalogue): Pick<Handlers, 'upgrade.check'> {
  return {
    'upgrade.check': ({ add }) =>
      held.tours.length === 0
        ? failure('not-found', 'There is no tour to check a change on: plan one first.')
        : success(upgradeFixture({ change: add.map(({ itemId }) => itemId).join(' ') })),
  };
}
