import { describe, expect, it } from 'vitest';
import { meanUseWhPerDay } from '../../../../src-main/model/flow/planned-use.ts';
import type { KitModel } from '../../../../src-main/model/flow/network.ts';
import { simulate, type Simulation } from '../../../../src-main/model/flow/simulate.ts';
import type { LegPlan } from '../../../../src-main/model/flow/timeline.ts';
import type { NightKind } from '../../../../shared-types/tour.ts';
import { bankOf, chargerOf, deviceOf } from '../../../support/flow-step.ts';
import { expectNear } from '../../../support/near.ts';
import { flowRun, type Outside } from '../../../support/random-flow.ts';

/** Rides from 8 to 14 h. */
const leg = (kind: NightKind): LegPlan => ({
  ...{ days: 3, ridingHours: 6, stops: [] },
  nights: { by: 'pattern', kinds: [kind], wallOutlets: 1, postOutlets: 1 },
});
/** Uses 6 Wh on each ride and 4 each evening. */
const phone = deviceOf({ useW: [0, 1, 1, 0] });
const wholeKit: Partial<KitModel> = { devices: [phone], banks: [bankOf()], chargers: [chargerOf([10])] };

interface Answer {
  readonly simulation: Simulation;
  /** Of the limit, from 1. */
  readonly shortOnDay: number | null;
}

/** Simulates a tour, and fails where any figure is not a number. */
function answerTo(kit: Partial<KitModel>, kind: NightKind = 'none', outside: Partial<Outside> = {}): Answer {
  const { network, course, draws } = flowRun(kit, [leg(kind)], 15, outside);
  const options = { confidence: 0.9, pointsPerDay: 24, onWalk: () => undefined };
  const simulation = simulate(network, course, [draws], options);
  const { record, margin, usual, limit } = simulation;
  const figures = [record.days, record.devices, record.storedWh, record.lowestWh, record.flatStep];
  for (const each of figures) expect(each.every(Number.isFinite)).toBe(true);
  expect([margin.value, usual.value].every(Number.isFinite)).toBe(true);
  return { simulation, shortOnDay: limit === null ? null : Math.floor(limit.step / course.stepsPerDay) + 1 };
}

describe('an answer to absurd input', () => {
  it('is a capped margin for an empty kit, or one without devices', () => {
    for (const kit of [{}, { ...wholeKit, devices: [] }])
      expect(answerTo(kit).simulation).toMatchObject({ margin: { value: 3, capped: true }, limit: null });
  });

  it('is no use at all per day where there are no devices', () => {
    expect(meanUseWhPerDay([], flowRun({}, [leg('none')], 15).timeline)).toBe(0);
  });

  it('is -100 % and day 1 for a load with no battery and no source', () => {
    const { simulation, shortOnDay } = answerTo({ devices: [deviceOf({ capacityWh: 0 })] });
    expect([simulation.margin.value, shortOnDay]).toEqual([-1, 1]);
    expect(simulation.record.flatStep[0]).toBeGreaterThanOrEqual(0);
  });

  it('is the device’s own battery where the bank has no capacity', () => {
    // Three days of 10 Wh, of which the battery holds 20.
    for (const banks of [[bankOf({ capacityWh: 0 })], []]) {
      const { margin } = answerTo({ devices: [phone], banks }).simulation;
      expectNear(margin.value, 20 / 30 - 1, 0.0026, 'margin');
    }
  });

  it('is what the stores hold where there is no wall and no source', () => {
    // 20 Wh of its own and 40 x 0.5 x 0.8 Wh of the bank.
    const { simulation, shortOnDay } = answerTo({ devices: [phone], banks: [bankOf()] });
    expectNear(simulation.margin.value, 36 / 30 - 1, 0.01, 'margin');
    expect(shortOnDay).toBe(3);
  });

  it('is close to -100 % for use beyond any supply', () => {
    const monster = deviceOf({ useW: [500, 500, 500, 500] });
    const { margin, record } = answerTo({ ...wholeKit, devices: [monster] }, 'wall', {
      panelW: 20,
      hubW: 6,
    }).simulation;
    // 8 W through its plug and 20 Wh of its own over a ride of 6 h are 11.3 W of 500.
    expect(margin.value).toBeLessThan(-0.977);
    expect(margin.value).toBeGreaterThanOrEqual(-1);
    expect(record.flatStep[0]).toBe(0);
  });

  it('is more than enough where every night has a wall', () => {
    // A day of 10 Wh; in the 18 h off the bicycle 10 W at the plug would store over 100.
    const { simulation } = answerTo(wholeKit, 'wall');
    expect(simulation.margin.value).toBeGreaterThan(1);
    expect(simulation.record.flatStep[0]).toBe(-1);
  });

  it('is no help from walls without a charger', () => {
    const { margin } = answerTo({ devices: [phone] }, 'wall').simulation;
    expectNear(margin.value, 20 / 30 - 1, 0.0026, 'margin');
  });

  it('is -100 % and day 1 at -40 degC: no cell gives anything', () => {
    const { simulation, shortOnDay } = answerTo(wholeKit, 'none', { airDegC: -40, panelW: 10 });
    expect([simulation.margin.value, shortOnDay]).toEqual([-1, 1]);
  });

  it('is what was stored before the heat at 60 degC: cells give all and take nothing', () => {
    const withSun = answerTo({ devices: [phone], banks: [bankOf()] }, 'none', { airDegC: 60, panelW: 10 });
    const without = answerTo({ devices: [phone], banks: [] }, 'none', { airDegC: 60 });
    expectNear(without.simulation.margin.value, 20 / 30 - 1, 0.0026, 'margin without a bank');
    // A bank still runs the phone through its plug, 40 x 0.5 x 0.8 Wh, though neither is charged.
    expectNear(withSun.simulation.margin.value, 36 / 30 - 1, 0.01, 'margin with a bank');
  });
});
