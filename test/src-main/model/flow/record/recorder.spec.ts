import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { recordHistories } from '../../../../../src-main/model/flow/record/record-histories.ts';
import type { TourRecord } from '../../../../../src-main/model/flow/record/recorder.ts';
import type { LegPlan } from '../../../../../src-main/model/flow/timeline.ts';
import { deviceOf } from '../../../../support/flow-step.ts';
import { expectNear } from '../../../../support/near.ts';
import { anyRun, flowRun } from '../../../../support/random-flow.ts';

/** Rides from 8 to 14 h and finds no wall. */
const leg: LegPlan = {
  ...{ days: 2, ridingHours: 6, stops: [] },
  nights: { by: 'pattern', kinds: ['none'], wallOutlets: 1, postOutlets: 1 },
};
/** Uses 6 Wh on each ride, of 20. */
const sipping = deviceOf({ useW: [0, 0, 1, 0] });

function record(useScales: readonly (readonly number[])[], pointsPerDay: number): TourRecord {
  const runs = useScales.map((useScale) => flowRun({ devices: [sipping] }, [leg], 60, { useScale }));
  const { network, course } = runs[0]!;
  return recordHistories(
    network,
    course,
    runs.map(({ draws }) => draws),
    pointsPerDay,
    () => undefined,
  );
}

describe('the record of a tour', () => {
  it('holds what is stored at the end of each point', () => {
    // Points at 6, 12, 18 and 24 h: 20 Wh until 8 h, 16 at 12 h, 14 from 14 h.
    const { storedWh, pointsPerDay } = record([[1]], 4);
    expect(pointsPerDay).toBe(4);
    expect([...storedWh]).toEqual([20, 16, 14, 14, 14, 10, 8, 8]);
  });

  it('holds every step where so many points are kept', () => {
    const { storedWh } = record([[1]], 24);
    expect([...storedWh.subarray(7, 15)]).toEqual([20, 19, 18, 17, 16, 15, 14, 14]);
  });

  it('lays the histories side by side', () => {
    // Half and all of the plan: 3 and 6 Wh a day.
    expect([...record([[0.5], [1]], 1).storedWh]).toEqual([17, 14, 14, 8]);
  });

  it('keeps the least that was stored in each history', () => {
    const { lowestWh } = record([[0.5], [1]], 1);
    expect([...lowestWh]).toEqual([14, 8]);
  });

  it('keeps the first flat must-have of each history, or that there was none', () => {
    // Twice the plan uses 2 Wh an hour: 12 on day 1, the other 8 by 12 h of day 2.
    const { flatStep, flatDevice, lowestWh } = record([[1], [2]], 1);
    expect([...flatStep]).toEqual([-1, 24 + 12]);
    expect([...flatDevice]).toEqual([-1, 0]);
    expectNear(lowestWh[1]!, 0, 1e-9, 'least stored, Wh');
  });

  it('keeps on which days a must-have was flat, after the first as well', () => {
    // Four times the plan, 24 Wh a day of 20: flat on both days. Twice the plan: on day 2 only. A day of full batteries: on none.
    const { flatOnDay } = record([[1], [2], [4]], 1);
    expect([...flatOnDay]).toEqual([0, 0, 1, 0, 1, 1]);
  });

  it('counts no nice-to-have that is flat', () => {
    const niceToHave = { ...sipping, mustHave: false };
    const { network, course, draws } = flowRun({ devices: [niceToHave] }, [leg], 60, { useScale: [4] });
    const { flatOnDay, flatStep } = recordHistories(network, course, [draws], 1, () => undefined);
    expect([...flatOnDay, ...flatStep]).toEqual([0, 0, -1]);
  });

  it('has no flat day where it has no first flat step, and the day of that step as the first', () => {
    fc.assert(
      fc.property(anyRun, ({ network, course, draws }) => {
        const easy = { ...draws, useScale: draws.useScale.map((scale) => scale / 4) };
        const { flatOnDay, flatStep } = recordHistories(network, course, [draws, easy], 1, () => undefined);
        flatStep.forEach((step, history) => {
          const ofHistory = flatOnDay.filter((_, at) => at % 2 === history);
          expect(ofHistory.indexOf(1)).toBe(step < 0 ? -1 : Math.floor(step / course.stepsPerDay));
        });
      }),
    );
  });
});
