import { describe, expect, it } from 'vitest';
import { buildTimeline, type LegPlan } from '../../../../src-main/model/flow/timeline.ts';

const leg: LegPlan = {
  days: 3,
  ridingHours: 6,
  stops: [{ hours: 1, outlets: 2, chance: 0.25 }],
  nightPattern: ['none', 'wall'],
  wallOutlets: 3,
  postOutlets: 1,
};
const at = (day: number, hour: number): number => day * 24 + hour;

describe('buildTimeline()', () => {
  const timeline = buildTimeline([leg, { ...leg, days: 2, nightPattern: ['electric-post'], stops: [] }], 60);

  it('has a step for every hour of every day', () => {
    expect(timeline).toMatchObject({ days: 5, steps: 120, stepsPerDay: 24, stepHours: 1 });
  });

  it('starts at home, with the outlets of a room', () => {
    expect(timeline.outlets[at(0, 5)]).toBe(3);
  });

  it('keeps a night’s wall from the end of the ride to the next', () => {
    expect(timeline.outlets[at(0, 20)]).toBe(0);
    expect(timeline.outlets[at(1, 5)]).toBe(0);
    expect(timeline.outlets[at(1, 16)]).toBe(3);
    expect(timeline.outlets[at(2, 7)]).toBe(3);
    expect(timeline.outlets[at(2, 9)]).toBe(0);
  });

  it('repeats the pattern and starts it anew with each leg', () => {
    expect([...timeline.wallAfterDay]).toEqual([0, 1, 0, 1, 1]);
    expect(timeline.outlets[at(3, 20)]).toBe(1);
  });

  it('draws luck once for each day stop', () => {
    expect([...timeline.luckChance]).toEqual([0.25, 0.25, 0.25]);
    expect([0, 1, 2].map((day) => timeline.luck[at(day, 11)])).toEqual([0, 1, 2]);
    expect(timeline.luck[at(3, 11)]).toBe(-1);
    expect(timeline.outlets[at(0, 11)]).toBe(2);
  });

  it('splits a step between the activities in it', () => {
    const stop = { hours: 0.5, outlets: 1, chance: 1 };
    const short = buildTimeline([{ ...leg, days: 1, ridingHours: 4, stops: [stop] }], 60);
    // Riding to 10 h, the stop to 10:30, riding on to 12:30.
    expect(
      [...short.activityShare.subarray(at(0, 10) * 4, at(0, 10) * 4 + 4)].map((x) => Math.round(x * 12)),
    ).toEqual([0, 0, 6, 6]);
    expect(short.outletTime[at(0, 10)]).toBeCloseTo(0.5, 9);
  });

  it('spends the whole of every step on something', () => {
    for (let step = 0; step < timeline.steps; step += 1) {
      const shares = timeline.activityShare.subarray(step * 4, step * 4 + 4);
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
    }
  });

  it('knows the leg of every day', () => {
    expect([...timeline.legOfDay]).toEqual([0, 0, 0, 1, 1]);
  });
});
