import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { usualRules, type Rules } from '../../../../shared-types/scenario.ts';
import type { KitModel } from '../../../../src-main/model/flow/network.ts';
import { createState, type StepState } from '../../../../src-main/model/flow/step-state.ts';
import type { LegPlan } from '../../../../src-main/model/flow/timeline.ts';
import { walkTour, type Onlooker } from '../../../../src-main/model/flow/walk-tour.ts';
import { deviceOf, bankOf } from '../../../support/flow-step.ts';
import { FlowAuditor } from '../../../support/flow-auditor.ts';
import { expectNear } from '../../../support/near.ts';
import { anyRun, flowRun, type FlowRun, type Outside } from '../../../support/random-flow.ts';

/** Rides from 8 to 14 h and sleeps where there is no wall. */
const wild = (days: number): LegPlan => ({
  ...{ days, ridingHours: 6, stops: [] },
  nights: { by: 'pattern', kinds: ['none'], wallOutlets: 1, postOutlets: 1 },
});
const blind: Onlooker = {
  beforeTour: () => undefined,
  afterStep: () => undefined,
  afterDay: () => undefined,
};

function walk(run: FlowRun, factor = 1, onlooker: Onlooker | null = blind): StepState {
  const state = createState(run.network, run.course.steps);
  walkTour(run.network, run.course, run.draws, factor, state, onlooker);
  return state;
}
const walkWild = (kit: Partial<KitModel>, days: number, outside: Partial<Outside> = {}): StepState =>
  walk(flowRun(kit, [wild(days)], 15, outside));

/** Uses 6 Wh on the ride and 4 in the evening of each day. */
const phone = deviceOf({ capacityWh: 10, useW: [0, 1, 1, 0] });

describe('walkTour()', () => {
  it('runs a device flat when its battery is used up away from any source', () => {
    // 10 Wh: gone at 22 h of day 1, so flat when day 2 rides off at 8 h.
    const state = walkWild({ devices: [phone] }, 2);
    expect([state.flatStep, state.flatDevice]).toEqual([(24 + 8) * 4, 0]);
    expectNear(state.unservedWh[0]!, 20 - 10, 1e-9, 'unserved, Wh');
  });

  it('walks on under an onlooker’s eyes, and stops at the first flat must-have without', () => {
    const run = flowRun({ devices: [phone] }, [wild(3)], 15);
    expectNear(walk(run).unservedWh[0]!, 30 - 10, 1e-9, 'unserved to the end, Wh');
    // One quarter of an hour at 1 W.
    const stopped = walk(run, 1, null);
    expectNear(stopped.unservedWh[0]!, 0.25, 1e-9, 'unserved when it stops, Wh');
    expect(stopped.flatStep).toBe((24 + 8) * 4);
  });

  it('walks on past a flat nice-to-have', () => {
    const run = flowRun({ devices: [{ ...phone, mustHave: false }] }, [wild(3)], 15);
    const state = walk(run, 1, null);
    expect(state.flatStep).toBe(-1);
    expectNear(state.unservedWh[0]!, 20, 1e-9, 'unserved, Wh');
  });

  it('lets one bank serve one device to the last watt-hour', () => {
    // Closed form: the bank's 40 Wh reach the device as 40 x 0.5 x 0.8 = 16 Wh, its own battery adds 10 Wh.
    const state = walkWild({ devices: [phone], banks: [bankOf()] }, 5);
    expectNear(50 - state.unservedWh[0]!, 10 + 16, 1e-6, 'used, Wh');
    expect(Math.max(...state.storedWh)).toBeLessThan(1e-6);
  });

  it('multiplies the plan by the factor and by the draws of the day', () => {
    // Day 1 half of 10 Wh, day 2 twice: 25 Wh at the plan, 50 at twice the plan.
    const run = flowRun({ devices: [phone] }, [wild(2)], 15, { useScale: [0.5, 2] });
    expectNear(walk(run).unservedWh[0]!, 25 - 10, 1e-6, 'unserved, Wh');
    expectNear(walk(run, 2).unservedWh[0]!, 50 - 10, 1e-6, 'unserved at twice the use, Wh');
  });

  it('lays the must-haves’ reserve for the use it tries, if nice-to-haves wait', () => {
    // A day of 10 Wh and a quarter more.
    const reserve = (whenShort: Rules['whenShort'], factor: number): number => {
      const kit = { devices: [phone], rules: { ...usualRules, whenShort } };
      return walk(flowRun(kit, [wild(1)], 15), factor).reserveWh[0]!;
    };
    expectNear(reserve('nice-to-haves-wait', 1), 12.5, 1e-9, 'reserve, Wh');
    expectNear(reserve('nice-to-haves-wait', 2), 25, 1e-9, 'reserve at twice the use, Wh');
    expect(reserve('serve-all', 1)).toBe(0);
  });

  it('loses what a bank loses by itself day by day', () => {
    const leaky = bankOf({ selfDischargePerDay: 0.1 });
    expectNear(walkWild({ banks: [leaky] }, 3).storedWh[0]!, 40 * 0.9 ** 3, 1e-9, 'stored, Wh');
  });

  it('finds an outlet only in histories in which it is free', () => {
    const lunch = { ...wild(1), stops: [{ hours: 1, outlets: 1, chance: 0.5 }] };
    const kit = { devices: [phone], chargers: [{ key: 'c', outputs: [phone.input], totalW: 10 }] };
    const drawn = [true, false].map((free) => {
      const state = walk(flowRun(kit, [lunch], 15, { free: [free] }));
      return state.takenWh[0]!;
    });
    // Of the 3 Wh ridden until lunch.
    expect(drawn[0]).toBeGreaterThan(2);
    expect(drawn[1]).toBe(0);
  });

  it('runs a lamp without battery from the hub', () => {
    const lamp = deviceOf({ capacityWh: 0, efficiencyIn: 1, useW: [0, 0, 1, 0] });
    expect(walkWild({ devices: [lamp] }, 1, { hubW: 3 }).unservedWh[0]).toBe(0);
    expectNear(walkWild({ devices: [lamp] }, 1).unservedWh[0]!, 6, 1e-9, 'unserved, Wh');
  });

  it('starts each walk anew', () => {
    const run = flowRun({ devices: [phone], banks: [bankOf()] }, [wild(5)], 15);
    const state = createState(run.network, run.course.steps);
    const once = [4, 1].map((factor) => {
      walkTour(run.network, run.course, run.draws, factor, state, null);
      return state.flatStep;
    });
    expect(once).toEqual([walk(run, 4, null).flatStep, walk(run, 1, null).flatStep]);
  });
});

function expectConserved(run: FlowRun, factor: number): void {
  const auditor = new FlowAuditor(run);
  walk(run, factor, auditor);
  expectNear(auditor.worst.imbalanceWh, 0, 1e-9, 'worst imbalance of a device or bank in a step, Wh');
  expectNear(auditor.worst.beyondWh, 0, 1e-9, 'most beyond empty, full or offered, Wh');
}

describe('conservation of energy', () => {
  it('holds for every device and bank in every step of any tour', () => {
    fc.assert(fc.property(anyRun, (run) => expectConserved(run, run.factor)));
  });

  it('holds in heat and frost, with every rule turned round', () => {
    const rules: Rules = {
      atWall: 'banks-first',
      unsteadySource: 'device-too',
      atPost: 'banks-only',
      whenShort: 'serve-all',
      cellsSleep: 'outside',
    };
    for (const airDegC of [-40, -15, 50]) {
      const kit = { devices: [phone, deviceOf({ key: 'n', mustHave: false })], banks: [bankOf()], rules };
      expectConserved(flowRun(kit, [wild(3)], 60, { airDegC, panelW: 6, hubW: 3 }), 1.5);
    }
  });
});
