import { describe, expect, it } from 'vitest';
import { planStop, type PlannedStop } from '../../../../../src-main/model/judge/stop-plan/plan-stop.ts';
import { stopBank, stopCharger, stopSituation, stopStore } from '../../../../support/stop-fixture.ts';

/** `Phone 0-20` for each stretch, in the order of ports and time. */
const words = ({ lanes, situation }: PlannedStop): readonly string[] =>
  lanes.flatMap(({ spans }) =>
    spans.map(
      ({ store, fromMinute, toMinute }) => `${situation.stores[store]!.label} ${fromMinute}-${toMinute}`,
    ),
  );

const camera = stopStore({ key: 'camera', label: 'Camera', rank: 'nice-to-have', capacityWh: 20 });

describe('planStop, with nothing to plug in', () => {
  it.each([
    ['no outlet', { outlets: 0 }],
    ['no charger', { chargers: [] }],
    ['nothing that stores energy', { stores: [] }],
    ['only a direct load', { stores: [stopStore({ capacityWh: 0, taperRoomWh: 0, needWh: 3 })] }],
    ['all full', { stores: [stopStore({ storedWh: 9.9 })] }],
  ])('answers a plan without lanes: %s', (_, over) => {
    const plan = planStop(stopSituation(over));
    expect(plan.lanes).toEqual([]);
    expect(plan.afterWh).toEqual(plan.situation.stores.map(({ storedWh }) => storedWh));
    expect(plan.bestOfMinutes).toBe(plan.finestMinutes);
  });
});

describe('planStop', () => {
  it('charges what takes the most of the time, and says with how much', () => {
    const plan = planStop(stopSituation({ minutes: 20 }));
    expect(plan.lanes).toEqual([
      { charger: 0, port: 0, spans: [{ store: 0, fromMinute: 0, toMinute: 20, startW: 10 }] },
    ]);
    // 10 W at the plug for a third of an hour, nine tenths of it stored.
    expect(plan.afterWh[0]).toBeCloseTo(3, 9);
  });

  it('charges a must-have no further than its need before a nice-to-have that is short', () => {
    const phone = stopStore({ needWh: 3, efficiencyIn: 0.8 });
    const plan = planStop(stopSituation({ minutes: 45, stores: [camera, phone].map(needed(4)) }));
    // The phone needs 3 Wh at 8 W into its cells: 22.5 min. The camera takes the rest of the time.
    expect(words(plan)).toEqual(['Phone 0-25', 'Camera 25-45']);
  });

  it('fills a bank for a must-have before a nice-to-have', () => {
    const phone = stopStore({ needWh: 14, storedWh: 9.9 });
    const plan = planStop(stopSituation({ minutes: 30, stores: [phone, needed(9)(camera), stopBank()] }));
    expect(words(plan)).toEqual(['Bank 0-30']);
    expect(plan.worth.mustHaveWh).toBeCloseTo(9.9 + 10 * 0.5 * 0.9 * 0.7, 9);
  });

  it('prefers the battery that will need it to a bank that loses some on the way', () => {
    const phone = stopStore({ capacityWh: 40, needWh: 30 });
    expect(words(planStop(stopSituation({ minutes: 30, stores: [stopBank(), phone] })))).toEqual([
      'Phone 0-30',
    ]);
  });

  it('gives the strong port to whom it helps most', () => {
    const slow = stopStore({ key: 'navigation', label: 'Navigation unit', takesW: 5, needWh: 9 });
    const fast = stopStore({ takesW: 20, capacityWh: 30, needWh: 25 });
    const plan = planStop(
      stopSituation({ minutes: 30, stores: [slow, fast], chargers: [stopCharger([5, 20])] }),
    );
    expect(words(plan)).toEqual(['Navigation unit 0-30', 'Phone 0-30']);
    expect(plan.lanes.map(({ port }) => port)).toEqual([0, 1]);
  });

  it('puts the stronger charger into a single outlet', () => {
    const chargers = [stopCharger([5], { key: 'a' }), stopCharger([10], { key: 'b' })];
    const plan = planStop(stopSituation({ minutes: 30, chargers }));
    expect(plan.lanes).toHaveLength(1);
    expect(plan.situation.chargers[plan.lanes[0]!.charger]!.key).toBe('b');
  });

  it('serves the must-have first where a charger can’t give all it is asked for', () => {
    const chargers = [stopCharger([10, 10], { totalW: 12 })];
    const plan = planStop(
      stopSituation({ minutes: 20, stores: [needed(9)(camera), stopStore({ needWh: 9 })], chargers }),
    );
    const startW = plan.lanes.map(({ spans }) => spans.map((span) => [span.store, span.startW]));
    expect(startW.flat()).toEqual([
      [0, 10],
      [1, expect.closeTo(2, 9)],
    ]);
  });

  it('moves no plug for a trifle', () => {
    const almostFull = stopStore({ key: 'light', label: 'Light', rank: 'nice-to-have', storedWh: 9.7 });
    const plan = planStop(
      stopSituation({ minutes: 40, stores: [almostFull, stopStore({ capacityWh: 40 })] }),
    );
    expect(words(plan)).toEqual(['Phone 0-40']);
  });

  it('charges must-haves early where the order makes no difference', () => {
    const stores = [stopStore({ capacityWh: 5, needWh: 5 }), stopBank({ takesW: 10 })];
    expect(words(planStop(stopSituation({ minutes: 60, stores })))[0]).toMatch(/^Phone 0-/);
  });

  it('is exact to five minutes for six stores at three ports in an hour', () => {
    const plan = planStop(sixAtThree);
    expect(plan.bestOfMinutes).toBe(5);
    expect(plan.leftOut).toEqual([]);
    expect(plan.isNarrowed).toBe(false);
  });

  it('says so where it compared all plans on a coarser grid only, or left stores out', () => {
    const many = Array.from({ length: 24 }, (_, place) =>
      stopStore({ key: `device-${place}`, takesW: 5 + place, capacityWh: 8 + place, needWh: 5 }),
    );
    const chargers = [7, 9, 11, 13].map((powerW) =>
      stopCharger([powerW, powerW + 10, powerW + 20], { key: `charger-${powerW}`, totalW: 30 }),
    );
    const plan = planStop({ minutes: 15, outlets: 4, stores: many, chargers });
    expect(plan.isNarrowed).toBe(true);
    expect(plan.leftOut.length).toBeGreaterThan(0);
    expect(plan.bestOfMinutes).toBeGreaterThanOrEqual(plan.finestMinutes);
    expect(plan.slotMinutes).toBeLessThanOrEqual(plan.bestOfMinutes);
  });
});

function needed(needWh: number) {
  return (store: ReturnType<typeof stopStore>) => ({ ...store, needWh: store.needWh || needWh });
}

/** Of the sizes riders have: phone, navigation unit, camera, light and two banks at a 30 W charger with three ports. */
const sixAtThree = stopSituation({
  stores: [
    stopStore({ capacityWh: 15.6, takesW: 18, storedWh: 5, needWh: 9 }),
    stopStore({ key: 'navigation', capacityWh: 6.3, takesW: 5, storedWh: 2, needWh: 5 }),
    { ...camera, capacityWh: 15.5, taperRoomWh: 1.6, storedWh: 6, needWh: 4 },
    stopStore({ key: 'light', rank: 'nice-to-have', capacityWh: 9.7, takesW: 5, storedWh: 4, needWh: 3 }),
    stopBank({ capacityWh: 70, takesW: 18, storedWh: 20 }),
    stopBank({ key: 'small-bank', capacityWh: 33, takesW: 10, storedWh: 10 }),
  ],
  chargers: [stopCharger([30, 12, 7.5], { totalW: 45 })],
});
