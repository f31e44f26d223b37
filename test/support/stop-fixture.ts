import fc from 'fast-check';
import type { Port } from '../../shared-types/port.ts';
import { gridsOf, type Grid } from '../../src-main/model/judge/stop-plan/grid.ts';
import { plugsOf } from '../../src-main/model/judge/stop-plan/plugs.ts';
import { problemOf, type StopProblem } from '../../src-main/model/judge/stop-plan/problem.ts';
import {
  inOrder,
  type Rank,
  type StopCharger,
  type StopSituation,
  type StopStore,
} from '../../src-main/model/judge/stop-plan/situation.ts';

/** Power Delivery takes any power, so that figures are what they say. */
const pd = (powerW: number): Port => ({ standard: 'pd', powerW });

/** An empty must-have of 10 Wh that takes 10 W and stores 0.9 of it, unless it says otherwise. */
export function stopStore(over: Partial<StopStore> & { readonly takesW?: number } = {}): StopStore {
  const { takesW = 10, ...rest } = over;
  const capacityWh = over.capacityWh ?? 10;
  return {
    key: 'phone',
    label: 'Phone',
    rank: 'must-have',
    capacityWh,
    taperRoomWh: capacityWh * 0.2,
    input: { ...pd(takesW), cable: 'c-5a' },
    efficiencyIn: 0.9,
    storedWh: 0,
    needWh: 0,
    usableShare: 1,
    ...rest,
  };
}

/** A bank of 50 Wh, of which seven tenths reach a device. */
export function stopBank(over: Partial<StopStore> & { readonly takesW?: number } = {}): StopStore {
  return stopStore({
    key: 'bank',
    label: 'Bank',
    rank: 'bank',
    capacityWh: 50,
    usableShare: 0.7,
    ...over,
  });
}

/** A charger with ports of these powers, that gives them all at once unless it says otherwise. */
export function stopCharger(portsW: readonly number[], over: Partial<StopCharger> = {}): StopCharger {
  const totalW = portsW.reduce((sum, powerW) => sum + powerW, 0);
  return { key: 'charger', label: 'Charger', outputs: portsW.map(pd), totalW, ...over };
}

/** An hour with one outlet, the phone and a charger with one port of 10 W. */
export function stopSituation(over: Partial<StopSituation> = {}): StopSituation {
  return { minutes: 60, outlets: 1, stores: [stopStore()], chargers: [stopCharger([10])], ...over };
}

/** A grid of slots of one length. */
export function evenGrid(slots: number, slotMinutes: number): Grid {
  return { slotMinutes, marks: Array.from({ length: slots + 1 }, (_, slot) => slot * slotMinutes) };
}

/** A situation ready to be searched, on the finest grid or on one of its own. */
export function stopProblem(situation: StopSituation, grid = gridsOf(situation.minutes)[0]!): StopProblem {
  const ordered = inOrder(situation);
  return problemOf(ordered.stores, plugsOf(ordered), grid);
}

const anyRank: fc.Arbitrary<Rank> = fc.constantFrom('must-have', 'nice-to-have', 'bank');
const anyTenth = fc.integer({ min: 0, max: 10 }).map((tenths) => tenths / 10);

const anyStore = fc
  .record({
    rank: anyRank,
    capacityWh: fc.integer({ min: 3, max: 30 }),
    takesW: fc.constantFrom(3, 5, 8, 12, 18, 30),
    full: anyTenth,
    need: fc.integer({ min: 0, max: 15 }).map((tenths) => tenths / 10),
  })
  .map(({ rank, capacityWh, takesW, full, need }) =>
    stopStore({
      rank,
      capacityWh,
      takesW,
      efficiencyIn: rank === 'bank' ? 0.92 : 0.88,
      storedWh: capacityWh * full,
      needWh: rank === 'bank' ? 0 : capacityWh * need,
      usableShare: rank === 'bank' ? 0.75 : 1,
    }),
  );

const anyPortW = fc.constantFrom(5, 8, 12, 20, 30);

/** Any kit beside a wall: stores, and ports shared out among up to two chargers whose totals may be tight. */
export function anyStop(stores: number, ports: number): fc.Arbitrary<StopSituation> {
  return fc
    .record({
      stores: fc.array(anyStore, { minLength: stores, maxLength: stores }),
      portsW: fc.array(anyPortW, { minLength: ports, maxLength: ports }),
      onFirst: fc.integer({ min: 1, max: ports }),
      give: fc.constantFrom(0.6, 1),
      outlets: fc.integer({ min: 1, max: 2 }),
    })
    .map(({ stores: drawn, portsW, onFirst, give, outlets }) => ({
      minutes: 60,
      outlets,
      stores: drawn.map((store, place) => ({ ...store, key: `store-${place}`, label: `Store ${place}` })),
      chargers: [portsW.slice(0, onFirst), portsW.slice(onFirst)]
        .filter((part) => part.length > 0)
        .map((part, place) => {
          const whole = stopCharger(part, { key: `charger-${place}`, label: `Charger ${place}` });
          return { ...whole, totalW: whole.totalW * give };
        }),
    }));
}
