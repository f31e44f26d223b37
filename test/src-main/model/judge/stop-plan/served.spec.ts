import { describe, expect, it } from 'vitest';
import { servedBy } from '../../../../../src-main/model/judge/stop-plan/served.ts';
import { stopBank, stopStore } from '../../../../support/stop-fixture.ts';

const stores = [
  stopStore({ key: 'phone', needWh: 6 }),
  stopStore({ key: 'navigation', needWh: 2 }),
  stopStore({ key: 'camera', rank: 'nice-to-have', needWh: 4 }),
  stopBank(),
];

describe('servedBy', () => {
  it('needs no bank where batteries are enough', () => {
    expect(servedBy(stores, [7, 2, 4, 0])).toEqual([
      { store: 0, needWh: 6, ownWh: 6, fromBanksWh: 0, shortWh: 0 },
      { store: 1, needWh: 2, ownWh: 2, fromBanksWh: 0, shortWh: 0 },
      { store: 2, needWh: 4, ownWh: 4, fromBanksWh: 0, shortWh: 0 },
    ]);
  });

  it('shares out what banks hold among must-haves by what they lack, and leaves nice-to-haves short', () => {
    // 2 Wh at the devices for 4 and 2 Wh that lack: a third of each.
    const [phone, navigation, camera] = servedBy(stores, [2, 0, 1, 2 / 0.7]);
    expect(phone!.fromBanksWh).toBeCloseTo(4 / 3, 12);
    expect(navigation!.fromBanksWh).toBeCloseTo(2 / 3, 12);
    expect(navigation!.shortWh).toBeCloseTo(4 / 3, 12);
    expect(camera).toEqual({ store: 2, needWh: 4, ownWh: 1, fromBanksWh: 0, shortWh: 3 });
  });

  it('gives nice-to-haves what must-haves leave', () => {
    const [, , camera] = servedBy(stores, [6, 2, 0, 3 / 0.7]);
    expect(camera!.fromBanksWh).toBeCloseTo(3, 12);
    expect(camera!.shortWh).toBeCloseTo(1, 12);
  });
});
