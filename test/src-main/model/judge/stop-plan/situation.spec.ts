import { expect, it } from 'vitest';
import { inOrder } from '../../../../../src-main/model/judge/stop-plan/situation.ts';
import { stopBank, stopCharger, stopSituation, stopStore } from '../../../../support/stop-fixture.ts';

it('puts must-haves before nice-to-haves before banks, strong chargers first, equals by their keys', () => {
  const stores = [
    stopBank(),
    stopStore({ key: 'camera', rank: 'nice-to-have' }),
    stopStore({ key: 'b' }),
    stopStore({ key: 'a' }),
  ];
  const chargers = [stopCharger([5], { key: 'weak' }), stopCharger([30], { key: 'strong' })];
  const ordered = inOrder(stopSituation({ stores, chargers }));
  expect(ordered.stores.map(({ key }) => key)).toEqual(['a', 'b', 'camera', 'bank']);
  expect(ordered.chargers.map(({ key }) => key)).toEqual(['strong', 'weak']);
});
