import { describe, expect, it } from 'vitest';
import { usualRules } from '../../../../shared-types/scenario.ts';
import { layCourse, type CourseAround, type TourCourse } from '../../../../src-main/model/flow/course.ts';
import { compileNetwork, type KitModel } from '../../../../src-main/model/flow/network.ts';
import { buildTimeline, type LegPlan } from '../../../../src-main/model/flow/timeline.ts';
import { rides } from '../../../../src-main/model/storage/cell-warmth.ts';
import { bankOf, chargerOf, deviceOf } from '../../../support/flow-step.ts';
import { expectNear } from '../../../support/near.ts';

/** Rides from 8 to 11 and 12 to 15 h, an hour at an outlet between that is there one time in four. */
const leg: LegPlan = {
  days: 2,
  ridingHours: 6,
  stops: [{ hours: 1, outlets: 1, chance: 0.25 }],
  nights: { by: 'list', kinds: ['electric-post', 'none'], wallOutlets: 2, postOutlets: 1 },
};
const timeline = buildTimeline([leg], 60);
const at = (day: number, hour: number): number => day * 24 + hour;

function courseOf(kit: Partial<KitModel>, around: Partial<CourseAround> = {}): TourCourse {
  const network = compileNetwork({ devices: [], banks: [], chargers: [], rules: usualRules, ...kit });
  return layCourse(network, timeline, {
    ...{ hubPlugW: [0, 0], cellsSleep: 'tent' },
    airDegC: new Float64Array(timeline.steps).fill(20),
    ...around,
  });
}

describe('layCourse()', () => {
  it('takes an empty kit', () => {
    const { mustHaveNeedWh, wallIncomeWh } = courseOf({});
    expect([...mustHaveNeedWh, ...wallIncomeWh].every((wh) => wh === 0)).toBe(true);
  });

  it('has the hub give its day’s power while riding', () => {
    const { hubWh } = courseOf({}, { hubPlugW: [3, 2] });
    expect([at(0, 7), at(0, 9), at(0, 11), at(1, 9)].map((step) => hubWh[step])).toEqual([0, 3, 0, 2]);
  });

  it('gives the hub the riding part of a step that is split', () => {
    // Riding until 10:20 h.
    const short = buildTimeline([{ ...leg, days: 1, stops: [], ridingHours: 7 / 3 }], 60);
    const around = { hubPlugW: [3], airDegC: new Float64Array(24), cellsSleep: 'tent' } as const;
    const network = compileNetwork({ devices: [], banks: [], chargers: [], rules: usualRules });
    expectNear(layCourse(network, short, around).hubWh[10]!, 1, 1e-9, 'hub, Wh');
  });

  it('knows a campsite post until the next ride', () => {
    const { atPost } = courseOf({});
    expect([at(0, 5), at(0, 20), at(1, 7), at(1, 9), at(1, 20)].map((step) => atPost[step])).toEqual([
      ...[0, 1, 1, 0, 0],
    ]);
  });

  it('counts what must-haves need, not nice-to-haves', () => {
    const devices = [
      deviceOf({ key: 'a', useW: [0, 0, 2, 0] }),
      deviceOf({ key: 'b', useW: [0, 0, 1, 0] }),
      deviceOf({ key: 'c', mustHave: false }),
    ];
    const { mustHaveNeedWh } = courseOf({ devices });
    expect([mustHaveNeedWh[at(0, 9)], mustHaveNeedWh[at(0, 11)]]).toEqual([3, 0]);
  });
});

describe('need of a course until the next wall', () => {
  const rider = deviceOf({ useW: [0, 0, 1, 0] });
  const need = (kit: Partial<KitModel>, step: number): number => courseOf(kit).needToWallWh[step]!;
  const kit = { devices: [rider], chargers: [chargerOf([10])] };

  it('is what a must-have uses after the step and before the wall', () => {
    // Rides at 10, 12, 13 and 14 h, then stands at a post; on day 2 there is no wall to the end.
    expect([need(kit, at(0, 9)), need(kit, at(0, 14)), need(kit, at(1, 9))]).toEqual([4, 0, 4]);
  });

  it('at a wall is that until the wall after it', () => {
    expect([need(kit, at(0, 5)), need(kit, at(0, 20))]).toEqual([6, 6]);
  });

  it('does not stop at a day stop, nor at a wall without a charger', () => {
    // At 10 h: lunch is at 11 h, three hours of riding after it.
    expect(need(kit, at(0, 10))).toBe(3);
    expect(need({ devices: [rider] }, at(0, 5))).toBe(12);
  });

  it('is nothing for a nice-to-have', () => {
    expect(need({ ...kit, devices: [{ ...rider, mustHave: false }] }, at(0, 5))).toBe(0);
  });
});

describe('warmth of a course', () => {
  const reach = (course: TourCourse, step: number, ridesWhere: (typeof rides)[number]) => {
    const place = course.warmth[step]! * course.warmthPlaces + rides.indexOf(ridesWhere);
    return { out: course.unreachableShare[place]!, charges: course.charges[place] === 1 };
  };
  const cold = { airDegC: new Float64Array(timeline.steps).fill(-10) };

  it('is that of the air on the road, and of the body beside it', () => {
    // 0.838 comes out at -10 degC; between 0.936 at 10 and 1 at 25, 0.97867 at 20 degC.
    const course = courseOf({}, cold);
    const onBicycle = reach(course, at(0, 9), 'on-bicycle');
    const onRider = reach(course, at(0, 9), 'on-rider');
    expectNear(onBicycle.out, 0.162, 1e-9, 'out of reach on the bicycle');
    expectNear(onRider.out, 0.02133, 1e-5, 'out of reach beside the body');
    expect([onBicycle.charges, onRider.charges]).toEqual([false, true]);
  });

  it('is known at its coldest, by where cells ride', () => {
    // The ride is at 10 degC, but for an hour at -10.
    const airDegC = Float64Array.from({ length: timeline.steps }, (_, step) =>
      step === at(1, 9) ? -10 : 10,
    );
    const { mostUnreachableShare } = courseOf({}, { airDegC });
    expectNear(mostUnreachableShare[rides.indexOf('on-bicycle')]!, 0.162, 1e-9, 'on the bicycle');
    // On the rider it is coldest in the evening tent: 13 degC, a fifth of the way from 0.936 to 1.
    expectNear(mostUnreachableShare[rides.indexOf('on-rider')]!, 1 - 0.9488, 1e-9, 'on the rider');
  });

  it('is that of a room at home before the tour', () => {
    expect(reach(courseOf({}, cold), at(0, 5), 'on-bicycle').charges).toBe(true);
  });

  it.each([
    // -7 degC: 0.3 of the way from 0.838 at -10 to 0.884 at 0.
    { cellsSleep: 'outside', out: 0.162, charges: false },
    { cellsSleep: 'tent', out: 1 - 0.8518, charges: false },
    { cellsSleep: 'sleeping-bag', out: 0.02133, charges: true },
  ] as const)('is where the cells sleep at a campsite: $cellsSleep', ({ cellsSleep, out, charges }) => {
    const night = reach(courseOf({}, { ...cold, cellsSleep }), at(1, 23), 'on-bicycle');
    expectNear(night.out, out, 1e-5, 'out of reach');
    expect(night.charges).toBe(charges);
  });

  it('tells steps on either side of the line apart', () => {
    const airDegC = Float64Array.from({ length: timeline.steps }, (_, step) => (step % 2 === 0 ? 0.2 : -0.2));
    const course = courseOf({}, { airDegC });
    expect(reach(course, at(0, 10), 'on-bicycle').charges).toBe(true);
    expect(reach(course, at(0, 9), 'on-bicycle').charges).toBe(false);
  });

  it.each([
    { degC: -0.1, charges: false },
    { degC: 0, charges: true },
    { degC: 45, charges: true },
    { degC: 45.1, charges: false },
  ])('draws the line of charging exactly, at $degC degC', ({ degC, charges }) => {
    const course = courseOf({}, { airDegC: new Float64Array(timeline.steps).fill(degC) });
    expect(reach(course, at(0, 9), 'on-bicycle').charges).toBe(charges);
  });
});

describe('income of a course from walls', () => {
  const kit = { devices: [deviceOf()], banks: [bankOf()], chargers: [chargerOf([20])] };
  const income = (each: Partial<KitModel>, step: number, around: Partial<CourseAround> = {}): number =>
    courseOf(each, around).wallIncomeWh[step]!;

  it('is nothing without a charger', () => {
    expect(income({ ...kit, chargers: [] }, at(0, 20))).toBe(0);
  });

  it('is not counted on at a day stop', () => {
    expect(income(kit, at(0, 11))).toBe(0);
  });

  it('does not hang on sun and hub', () => {
    expect(income(kit, at(0, 9), { hubPlugW: [3, 3] })).toBe(0);
  });

  // Through the bank 0.9 x 0.5 and into the device 0.8 of it: 0.36.
  it('is what the chargers give, less the losses of a bank', () => {
    expectNear(income(kit, at(0, 20)), 20 * 0.36, 1e-9, 'at a post, Wh');
    expect(income(kit, at(1, 20))).toBe(0);
  });

  it('loses nothing in a bank where there is none', () => {
    expectNear(income({ ...kit, banks: [] }, at(0, 20)), 10 * 0.8, 1e-9, 'at a post, Wh');
  });

  it('is no more than must-haves and banks can take', () => {
    const strong = { ...kit, chargers: [chargerOf([60])] };
    expectNear(income(strong, at(0, 20)), (10 + 10) * 0.36, 1e-9, 'at a post, Wh');
    const nice = deviceOf({ key: 'nice', mustHave: false });
    const withNice = { ...strong, devices: [deviceOf(), nice] };
    expectNear(income(withNice, at(0, 20)), (10 + 10) * 0.36, 1e-9, 'beside a nice-to-have, Wh');
  });

  it('is from as many chargers as there are outlets', () => {
    const two = { ...kit, chargers: [chargerOf([12]), chargerOf([6])] };
    expectNear(income(two, at(0, 5)), 18 * 0.36, 1e-9, 'in a room, Wh');
    expectNear(income(two, at(0, 20)), 12 * 0.36, 1e-9, 'at a post, Wh');
  });
});
