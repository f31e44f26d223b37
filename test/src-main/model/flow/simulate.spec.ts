import { describe, expect, it } from 'vitest';
import type { Draws } from '../../../../src-main/model/flow/histories/draws.ts';
import type { KitModel } from '../../../../src-main/model/flow/network.ts';
import { middleOf, simulate, type Simulation } from '../../../../src-main/model/flow/simulate.ts';
import type { LegPlan } from '../../../../src-main/model/flow/timeline.ts';
import { deviceOf } from '../../../support/flow-step.ts';
import { expectNear } from '../../../support/near.ts';
import { flowRun } from '../../../support/random-flow.ts';

/** Rides from 8 to 14 h and finds no wall. */
const leg: LegPlan = {
  ...{ days: 4, ridingHours: 6, stops: [] },
  nights: { by: 'pattern', kinds: ['none'], wallOutlets: 1, postOutlets: 1 },
};
/** Asks for 2 Wh each evening and 3 on each ride: 20 Wh in four days, of which it holds 18. */
const phone = deviceOf({ key: 'phone', capacityWh: 18, useW: [0, 0.5, 0.5, 0] });
const factorTolerance = 0.0026;

const unseen = (): void => undefined;

/** Simulates a tour whose histories differ in how much is used. */
function simulateUses(
  kit: Partial<KitModel>,
  useScales: readonly number[],
  { confidence = 0.9, onWalk = unseen } = {},
): Simulation & { readonly stepsPerDay: number } {
  const runs = useScales.map((scale) => flowRun(kit, [leg], 15, { useScale: [scale] }));
  const { network, course } = runs[0]!;
  const histories: readonly Draws[] = runs.map(({ draws }) => draws);
  const simulation = simulate(network, course, histories, { confidence, pointsPerDay: 24, onWalk });
  return { ...simulation, stepsPerDay: course.stepsPerDay };
}
const nineAndOne = [...new Array<number>(9).fill(1), 2];

describe('simulate()', () => {
  it('finds the margin, and the device and day that hold it back', () => {
    const { margin, limit, stepsPerDay } = simulateUses({ devices: [phone] }, [1]);
    expectNear(margin.value, 18 / 20 - 1, factorTolerance, 'margin');
    expect(limit!.device).toBe(0);
    // At nine tenths of the plan it lasts to the end, so just above it the last evening is short: from 18 h of day 4.
    expect(limit!.step).toBeGreaterThanOrEqual(3 * stepsPerDay + 18 * 4);
    expect(limit!.step).toBeLessThan(3 * stepsPerDay + 22 * 4);
  });

  it('has no limit where the margin is capped', () => {
    const { margin, usual, limit } = simulateUses({}, [1, 1]);
    expect(margin).toMatchObject({ value: 3, capped: true });
    expect([usual.value, limit]).toEqual([3, null]);
  });

  it('lets one history in ten fail at nine in ten', () => {
    expectNear(
      simulateUses({ devices: [phone] }, nineAndOne, { confidence: 0.9 }).margin.value,
      18 / 20 - 1,
      factorTolerance,
      'margin with one failing',
    );
    expectNear(
      simulateUses({ devices: [phone] }, nineAndOne, { confidence: 1 }).margin.value,
      18 / 40 - 1,
      factorTolerance,
      'margin with none failing',
    );
  });

  it('knows the margin of half the histories: never below the margin', () => {
    // A quarter of them use half as much again, a quarter half as little: more than half carry the plan's own margin.
    const scales = [0.5, 1, 1, 1.5].flatMap((scale) => new Array<number>(8).fill(scale));
    const { margin, usual } = simulateUses({ devices: [phone] }, scales, { confidence: 0.9 });
    expectNear(margin.value, 18 / 30 - 1, factorTolerance, 'margin');
    // An estimate, to six per cent of the plan.
    expectNear(usual.value, 18 / 20 - 1, 0.061, 'usual margin');
    const equal = simulateUses({ devices: [phone] }, [1, 1, 1]);
    expect(equal.usual.value).toBeGreaterThanOrEqual(equal.margin.value);
  });

  it('names the device that most often runs flat first', () => {
    // A camera that is used more than its battery holds goes before the phone in every history.
    const camera = deviceOf({ key: 'camera', capacityWh: 3, useW: [0, 0, 0.5, 0] });
    const { limit } = simulateUses({ devices: [phone, camera] }, [0.9, 1, 1.1]);
    // In order of service: camera, phone.
    expect(limit!.device).toBe(0);
  });

  it('does not let a nice-to-have hold the margin back', () => {
    const toy = deviceOf({ key: 'toy', mustHave: false, capacityWh: 1, useW: [2, 2, 2, 2] });
    const { margin } = simulateUses({ devices: [phone, toy] }, [1]);
    expectNear(margin.value, 18 / 20 - 1, factorTolerance, 'margin');
  });

  it('records every history at the planned use, whatever the margin', () => {
    const { record } = simulateUses({ devices: [phone] }, [0.5, 1]);
    expect(record.histories).toBe(2);
    expect(record.flatStep[0]).toBe(-1);
    expect(record.flatStep[1]).toBeGreaterThan(0);
  });

  it('tells of every walk, so that progress shows and a run can be cancelled', () => {
    let walks = 0;
    simulateUses({ devices: [phone] }, nineAndOne, { onWalk: () => void (walks += 1) });
    expect(walks).toBeGreaterThan(10);
    const cancel = (): never => {
      throw new Error('cancelled');
    };
    expect(() => simulateUses({ devices: [phone] }, nineAndOne, { onWalk: cancel })).toThrow('cancelled');
  });

  it('gives the same answer whatever the order of the histories', () => {
    const scales = [0.7, 1.3, 1, 0.9, 1.1];
    const [straight, turned] = [scales, scales.toReversed()].map(
      (each) => simulateUses({ devices: [phone] }, each).margin.value,
    );
    expectNear(turned!, straight!, factorTolerance, 'margin');
  });
});

describe('middleOf()', () => {
  it.each([
    { values: [7], middle: 7 },
    { values: [9, 1, 5], middle: 5 },
    { values: [8, 2, 6, 4], middle: 4 },
  ])('of $values is $middle', ({ values, middle }) => expect(middleOf(values)).toBe(middle));
});
