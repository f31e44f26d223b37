import { describe, expect, it } from 'vitest';
import { meanUseWhPerDay, plannedUseWh } from '../../../../src-main/model/flow/planned-use.ts';
import { buildTimeline, type LegPlan } from '../../../../src-main/model/flow/timeline.ts';
import { deviceOf } from '../../../support/flow-step.ts';
import { expectNear } from '../../../support/near.ts';

/** Each day: night 9 h, evening 4 h, riding 6 h from 8 to 14 h, 5 h of camp by day. */
const leg: LegPlan = {
  days: 2,
  ridingHours: 6,
  stops: [],
  nights: { by: 'pattern', kinds: ['none'], wallOutlets: 1, postOutlets: 1 },
};
const camera = deviceOf({ key: 'camera', useW: [0, 1, 2, 3] });
const phone = deviceOf({ key: 'phone', useW: [0.5, 0.5, 0.5, 0.5] });
const sum = (values: Float64Array): number => values.reduce((all, each) => all + each, 0);

describe('plannedUseWh()', () => {
  it('is nothing without devices', () => {
    expect(plannedUseWh([], buildTimeline([leg], 60))).toHaveLength(0);
  });

  it('puts each device’s use of each step in its place', () => {
    const use = plannedUseWh([camera, phone], buildTimeline([leg], 60));
    const hour = (at: number): number[] => [...use.subarray(at * 2, at * 2 + 2)];
    expect([hour(3), hour(9), hour(15), hour(24 + 19)]).toEqual([
      [0, 0.5],
      [2, 0.5],
      [3, 0.5],
      [1, 0.5],
    ]);
  });

  it.each([5, 15, 60])('adds up to the same day in steps of %d minutes', (stepMinutes) => {
    // 4 h x 1 W + 6 h x 2 W + 5 h x 3 W, on two days.
    expectNear(sum(plannedUseWh([camera], buildTimeline([leg], stepMinutes))), 2 * 31, 1e-9, 'use, Wh');
  });

  it('shares a step between the activities in it', () => {
    // Riding from 8 to 12:20 h: a third of that hour at 2 W, two thirds at 3 W.
    const use = plannedUseWh([camera], buildTimeline([{ ...leg, ridingHours: 13 / 3 }], 60));
    expectNear(use[12]!, 2 / 3 + 2, 1e-9, 'use, Wh');
  });
});

describe('meanUseWhPerDay()', () => {
  it('is what all devices ask for on a mean day', () => {
    const restAfter = [leg, { ...leg, days: 1, ridingHours: 0 }];
    // Two days of 31 Wh and one that rests 11 h by day: 4 + 33 Wh; the phone asks for 12 Wh on each.
    expectNear(
      meanUseWhPerDay([camera, phone], buildTimeline(restAfter, 15)),
      (31 + 31 + 37) / 3 + 12,
      1e-9,
      'use, Wh',
    );
  });
});
