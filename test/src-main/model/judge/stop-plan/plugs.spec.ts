import { describe, expect, it } from 'vitest';
import { plugsOf, type Plugs } from '../../../../../src-main/model/judge/stop-plan/plugs.ts';
import { stopBank, stopCharger, stopSituation, stopStore } from '../../../../support/stop-fixture.ts';

/** `0:10 2:5` for each mode: which store gets how many W at most. */
const gifts = ({ modes }: Plugs): readonly string[] =>
  modes
    .map(({ free, shared }) =>
      [...free, ...shared.flatMap(({ hangs }) => hangs)]
        .map(({ store, linkW }) => `${store}:${linkW}`)
        .sort()
        .join(' '),
    )
    .sort();

const [slow, fast] = [stopStore({ key: 'a', takesW: 5 }), stopStore({ key: 'b', takesW: 20 })];

describe('plugsOf', () => {
  it('has no mode without outlets, chargers or anything that takes energy', () => {
    expect(plugsOf(stopSituation({ outlets: 0 })).modes).toEqual([]);
    expect(plugsOf(stopSituation({ chargers: [] })).modes).toEqual([]);
    expect(plugsOf(stopSituation({ stores: [stopStore({ storedWh: 10 })] })).modes).toEqual([]);
  });

  it('takes ports that give the same for one class, and ways that give the same for one mode', () => {
    const plugs = plugsOf(stopSituation({ chargers: [stopCharger([10, 10, 10])] }));
    expect(plugs.classes).toEqual([{ charger: 0, strengthW: 10, count: 3 }]);
    expect(gifts(plugs)).toEqual(['0:10']);
  });

  it('drops what gives some store less and none more', () => {
    const plugs = plugsOf(stopSituation({ stores: [slow, fast], chargers: [stopCharger([20, 5])] }));
    expect(gifts(plugs)).toEqual(['0:5 1:20']);
  });

  it('keeps what gives one store more and another less', () => {
    const stores = [stopStore({ key: 'a', takesW: 20 }), stopStore({ key: 'b', takesW: 20 })];
    const plugs = plugsOf(stopSituation({ stores, chargers: [stopCharger([20, 5])] }));
    expect(gifts(plugs)).toEqual(['0:20 1:5', '0:5 1:20']);
  });

  it('keeps a store alone where another before it would take from it', () => {
    const stores = [fast, stopBank({ takesW: 20 })];
    const tight = stopCharger([20, 20], { totalW: 25 });
    expect(gifts(plugsOf(stopSituation({ stores, chargers: [tight] })))).toEqual(['0:20 1:20', '1:20']);
  });

  it('plugs in no more chargers than there are outlets', () => {
    const chargers = [stopCharger([20], { key: 'a' }), stopCharger([5], { key: 'b' })];
    const stores = [slow, fast];
    expect(gifts(plugsOf(stopSituation({ stores, chargers, outlets: 2 })))).toEqual(['0:5 1:20']);
    expect(gifts(plugsOf(stopSituation({ stores, chargers, outlets: 1 })))).toEqual(['0:5', '1:20']);
  });

  it('counts no more power than the chargers in the outlets give, nor than their ports do', () => {
    const chargers = [stopCharger([20], { key: 'a', totalW: 90 }), stopCharger([5], { key: 'b' })];
    expect(plugsOf(stopSituation({ chargers, outlets: 1 })).mostW).toBe(20);
    expect(plugsOf(stopSituation({ chargers, outlets: 6 })).mostW).toBe(25);
  });
});
