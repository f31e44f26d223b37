import { describe, expect, it } from 'vitest';
import { usualRules, type Rules } from '../../../shared-types/scenario.ts';
import type { KitModel } from '../../../src-main/model/flow/network.ts';
import type { LegPlan } from '../../../src-main/model/flow/timeline.ts';
import type { ReadyScenario } from '../../../src-main/workbench/simulate-scenario.ts';
import { wallOrderChange } from '../../../src-main/workbench/wall-order.ts';
import { expectNear } from '../../support/near.ts';
import { flowRun } from '../../support/random-flow.ts';

const efficiencyIn = 0.8;
const efficiencyOut = 0.9;
const input = { standard: 'pd', powerW: 20, cable: 'c-3a' } as const;

const phone = {
  ...{ label: 'Phone', key: 'phone', mustHave: true, capacityWh: 20, batteryWh: 20, input },
  ...{ efficiencyIn: 1, pluggedW: 0, ridesWhere: 'on-bicycle' as const },
  useW: [0, 1, 0, 0] as const,
};
const bank = {
  ...{ label: 'Bank', key: 'bank', capacityWh: 200, input, efficiencyIn, efficiencyOut },
  outputs: [{ standard: 'pd', powerW: 20 } as const],
  ...{ chargesWhileServing: true, ridesWhere: 'on-bicycle' as const, standbyW: 0, selfDischargePerDay: 0 },
};
const charger = { key: 'charger', outputs: [{ standard: 'pd', powerW: 20 } as const], totalW: 20 };
const kit = { devices: [phone], banks: [bank], chargers: [charger] };

const days = 10;
const ridingHours = 6;
/** Half an hour at an outlet that is always free, after a morning that has used 3 Wh, and none at night. */
const leg: LegPlan = {
  ...{ days, ridingHours, stops: [{ hours: 0.5, outlets: 1, chance: 1 }] },
  nights: { by: 'pattern', kinds: ['none'], wallOutlets: 1, postOutlets: 1 },
};

/** A kit on ten such days, in as many histories as asked for. */
function ready(changes: Partial<KitModel> = {}, histories = 1, atWall: Rules['atWall'] = 'devices-first') {
  const run = flowRun({ ...kit, rules: { ...usualRules, atWall }, ...changes }, [leg], 15);
  const { network, course, draws } = run;
  return {
    ...{ network, course, rides: [], courseWith: () => course },
    histories: Array.from({ length: histories }, () => draws),
    panels: { byHistory: [draws.panelW], meanW: Float64Array.from(draws.panelW) },
  } satisfies ReadyScenario;
}

const ignore = (): void => undefined;

describe('wallOrderChange()', () => {
  it.each([
    { what: 'bank', changes: { banks: [] } },
    { what: 'device', changes: { devices: [] } },
    { what: 'charger', changes: { chargers: [] } },
  ])('is null without a $what', ({ changes }) => {
    expect(wallOrderChange(ready(changes), ignore)).toBeNull();
  });

  it('is null where no wall is reached', () => {
    const whole = ready();
    const course = { ...whole.course, outlets: new Uint8Array(whole.course.steps) };
    expect(wallOrderChange({ ...whole, course }, ignore)).toBeNull();
  });

  it('loses more with banks first: what the phone gets then comes through the bank', () => {
    const change = wallOrderChange(ready(), ignore)!;
    expect(change.other).toBe('banks-first');
    /*
     * Devices first, the stop makes good what the phone used before it, half of the day's ride, without a loss. Banks
     * first, the port is the bank's all the while; the bank has room, for in the end it gives the phone what the stop does not.
     * What the phone then takes out of the bank costs 1/efficiencyOut - 1, and into it 1 - efficiencyIn of what the port gives.
     */
    expect(change.lostWh).toBeGreaterThan(0);
    const mostPerDayWh = ridingHours * (1 / (efficiencyIn * efficiencyOut) - 1);
    expect(change.lostWh).toBeLessThan(days * (mostPerDayWh + 10 * (1 - efficiencyIn)));
    expectNear(change.unservedWh, 0, 1e-9, 'unserved, Wh');
  });

  it('says the opposite of the opposite rule', () => {
    const change = wallOrderChange(ready(), ignore)!;
    const back = wallOrderChange(ready({}, 1, 'banks-first'), ignore)!;
    expect(back.other).toBe('devices-first');
    expectNear(back.lostWh, -change.lostWh, 1e-9, 'lost, Wh');
  });

  it('is the mean over the histories, of which it walks a few in pairs', () => {
    let walks = 0;
    const one = wallOrderChange(ready({}, 1), ignore)!;
    const many = wallOrderChange(ready({}, 200), () => (walks += 1))!;
    expectNear(many.lostWh, one.lostWh, 1e-9, 'lost, Wh');
    expect(walks % 2).toBe(0);
    expect(walks).toBeLessThan(200);
  });
});
