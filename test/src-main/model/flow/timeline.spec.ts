import { describe, expect, it } from 'vitest';
import { activities } from '../../../../src-main/model/storage/device.ts';
import { buildTimeline, whereabouts, type LegPlan } from '../../../../src-main/model/flow/timeline.ts';
import { expectNear } from '../../../support/near.ts';

/** Rides from 8 to 11 and 12 to 15 h, with an hour of lunch between. */
const leg: LegPlan = {
  days: 3,
  ridingHours: 6,
  stops: [{ hours: 1, outlets: 2, chance: 0.25 }],
  nights: { by: 'pattern', kinds: ['none', 'wall'], wallOutlets: 3, postOutlets: 1 },
};
const post: LegPlan = { ...leg, days: 2, stops: [], nights: { ...leg.nights, kinds: ['electric-post'] } };
const at = (day: number, hour: number): number => day * 24 + hour;

describe('buildTimeline()', () => {
  const timeline = buildTimeline([leg, post], 60);
  const where = (day: number, hour: number): string => whereabouts[timeline.where[at(day, hour)]!]!;

  it('takes a tour without legs', () => {
    expect(buildTimeline([], 15)).toMatchObject({ days: 0, steps: 0 });
  });

  it('has a step for every hour of every day', () => {
    expect(timeline).toMatchObject({ days: 5, steps: 120, stepsPerDay: 24, stepHours: 1 });
  });

  it('knows the leg of every day and every step', () => {
    expect([...timeline.legOfDay]).toEqual([0, 0, 0, 1, 1]);
    expect([timeline.leg[at(2, 23)], timeline.leg[at(3, 0)]]).toEqual([0, 1]);
  });

  it('starts at home, with the outlets of a room, whatever the first night', () => {
    expect(where(0, 5)).toBe('wall');
    expect([timeline.outlets[at(0, 5)], timeline.outletHours[at(0, 7)]]).toEqual([3, 1]);
  });

  it('keeps a night’s wall from the end of the ride to the start of the next', () => {
    expect(timeline.outlets[at(0, 20)]).toBe(0);
    expect(timeline.outlets[at(1, 5)]).toBe(0);
    expect(timeline.outlets[at(1, 16)]).toBe(3);
    expect(timeline.outlets[at(2, 7)]).toBe(3);
    expect(timeline.outlets[at(2, 9)]).toBe(0);
  });

  it('keeps the night of the leg before until the first ride of the next', () => {
    const roomThenCamp = buildTimeline(
      [
        { ...leg, days: 1, nights: { ...leg.nights, kinds: ['wall'] } },
        { ...leg, nights: { ...leg.nights, kinds: ['none'], wallOutlets: 1 } },
      ],
      60,
    );
    expect(roomThenCamp.outlets[at(1, 6)]).toBe(3);
    expect(roomThenCamp.outlets[at(1, 20)]).toBe(0);
  });

  it('says where the rider is: on the road, at a stop, in camp by what it offers', () => {
    expect([9, 11, 20].map((hour) => where(0, hour))).toEqual(['out', 'out', 'none']);
    expect([where(1, 20), where(2, 6), where(3, 20)]).toEqual(['wall', 'wall', 'electric-post']);
  });

  it('spends the whole of every step on something', () => {
    const kinds = activities.length;
    for (let step = 0; step < timeline.steps; step += 1) {
      const shares = timeline.activityShare.subarray(step * kinds, (step + 1) * kinds);
      expectNear(
        shares.reduce((sum, share) => sum + share, 0),
        1,
        1e-9,
        'shares together',
      );
    }
  });

  it('rides the hours of the ride', () => {
    const ridden = Array.from({ length: 24 }, (_, hour) => hour).filter(
      (hour) => timeline.riding[hour] === 1,
    );
    expect(ridden).toEqual([8, 9, 10, 12, 13, 14]);
  });
});

describe('nights of a timeline', () => {
  const wallsOf = (nights: Partial<LegPlan['nights']>): number[] => {
    const { wallAfterDay } = buildTimeline([{ ...leg, days: 4, nights: { ...leg.nights, ...nights } }], 60);
    return [...wallAfterDay];
  };
  it('repeat a pattern to the end of the leg', () => {
    expect(wallsOf({ kinds: ['none', 'wall'] })).toEqual([0, 1, 0, 1]);
  });
  it('start the pattern anew with each leg', () => {
    expect([...buildTimeline([leg, leg], 60).wallAfterDay]).toEqual([0, 1, 0, 0, 1, 0]);
  });
  it('count a post as a wall', () => {
    expect(wallsOf({ kinds: ['electric-post', 'none'] })).toEqual([1, 0, 1, 0]);
  });
  it('follow a list night by night, and have no wall after its end', () => {
    expect(wallsOf({ by: 'list', kinds: ['wall', 'none', 'wall'] })).toEqual([1, 0, 1, 0]);
    expect(wallsOf({ by: 'list', kinds: ['wall'] })).toEqual([1, 0, 0, 0]);
  });
  it('leave out the end of a list that is longer than the leg', () => {
    expect(wallsOf({ by: 'list', kinds: ['none', 'none', 'none', 'none', 'wall'] })).toEqual([0, 0, 0, 0]);
  });
});

describe('day stops of a timeline', () => {
  it('draw luck once for each stop of each day', () => {
    const { luck, luckChance, outlets } = buildTimeline([leg, post], 60);
    expect([...luckChance]).toEqual([0.25, 0.25, 0.25]);
    expect([0, 1, 2].map((day) => luck[at(day, 11)])).toEqual([0, 1, 2]);
    expect(outlets[at(0, 11)]).toBe(2);
  });

  it('need no luck for a night’s wall', () => {
    const { luck, outlets } = buildTimeline([leg], 60);
    expect([outlets[at(1, 20)], luck[at(1, 20)]]).toEqual([3, -1]);
  });

  it('need none for a rest without outlets', () => {
    const rest = { hours: 1, outlets: 0, chance: 1 };
    const { luck, outletHours } = buildTimeline([{ ...leg, stops: [rest] }], 60);
    expect([luck[at(0, 11)], outletHours[at(0, 11)]]).toEqual([-1, 0]);
  });

  it('tell two stops of a day apart', () => {
    // Rides 2 h, coffee from 10 h, 2 h, lunch from 13 h, 2 h.
    const coffee = { hours: 1, outlets: 1, chance: 0.5 };
    const { luck, luckChance } = buildTimeline([{ ...leg, days: 2, stops: [coffee, leg.stops[0]!] }], 60);
    expect([...luckChance]).toEqual([0.5, 0.25, 0.5, 0.25]);
    expect([at(0, 10), at(0, 13), at(1, 10), at(1, 13)].map((step) => luck[step])).toEqual([0, 1, 2, 3]);
  });

  it.each([5, 15, 30, 60])('keep 20 minutes in steps of %d minutes', (stepMinutes) => {
    const short = { hours: 1 / 3, outlets: 1, chance: 1 };
    const day = buildTimeline([{ ...leg, days: 1, stops: [short] }], stepMinutes);
    let hours = 0;
    day.outletHours.forEach((each, step) => (hours += day.luck[step]! >= 0 ? each : 0));
    expectNear(hours, 1 / 3, 1e-9, 'hours at an outlet');
  });

  it('split a step between the activities in it', () => {
    // Riding to 10 h, the stop to 10:30, riding on to 12:30.
    const stop = { hours: 0.5, outlets: 1, chance: 1 };
    const short = buildTimeline([{ ...leg, days: 1, ridingHours: 4, stops: [stop] }], 60);
    const shares = short.activityShare.subarray(10 * activities.length, 11 * activities.length);
    [0, 0, 0.5, 0.5].forEach((share, kind) => expectNear(shares[kind]!, share, 1e-9, 'share of the step'));
    expectNear(short.outletHours[10]!, 0.5, 1e-9, 'hours at an outlet');
  });
});
