import { describe, expect, it } from 'vitest';
import { search } from '../../../../../src-main/model/judge/stop-plan/search.ts';
import {
  stopBank,
  stopCharger,
  stopProblem,
  stopSituation,
  stopStore,
} from '../../../../support/stop-fixture.ts';

describe('search', () => {
  it('finds nothing to do where nothing can be plugged in', () => {
    expect(search(stopProblem(stopSituation({ outlets: 0 })))).toEqual({ modes: [], worth: 0, isBest: true });
  });

  it('has a mode for every slot', () => {
    const found = search(stopProblem(stopSituation({ minutes: 45 })));
    expect(found.modes).toHaveLength(9);
    expect(found.isBest).toBe(true);
  });

  it('gives up where there are too many states, with the best it met', () => {
    const stores = [3.3, 5.7, 7.9, 11.1].map((takesW, place) =>
      stopStore({ key: `device-${place}`, takesW, capacityWh: 9 + place, needWh: 5.3 + place }),
    );
    const banks = [13.7, 17.3, 19.9].map((takesW, place) => stopBank({ key: `bank-${place}`, takesW }));
    const chargers = [stopCharger([23, 17, 11, 6], { totalW: 31 })];
    const found = search(
      stopProblem(stopSituation({ minutes: 60, stores: [...stores, ...banks], chargers })),
    );
    expect(found.isBest).toBe(false);
    expect(found.modes).toHaveLength(12);
    expect(found.worth).toBeGreaterThan(0);
  });
});
