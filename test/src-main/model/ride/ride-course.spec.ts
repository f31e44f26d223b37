import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TerrainClass } from '../../../../shared-types/tour.ts';
import type { TrackPiece } from '../../../../shared-types/track.ts';
import {
  courseOfClass,
  courseOfTrack,
  type Course,
  type Surroundings,
} from '../../../../src-main/model/ride/course.ts';
import { generatorWheel, type ConverterModel, type HubModel } from '../../../../src-main/model/ride/hub.ts';
import type { RideModel } from '../../../../src-main/model/ride/power-balance.ts';
import { rideCourse, type Ride, type RiddenCourse } from '../../../../src-main/model/ride/ride-course.ts';
import { terrainClasses } from '../../../../src-main/model/ride/terrain.ts';
import { windsOf } from '../../../../src-main/model/ride/winds.ts';
import { expectNear } from '../../../support/near.ts';
import { anyConverter, anyHub, anyPieces, anyRide, anyRiderW } from '../../../support/random-ride.ts';

const bare: RideModel = {
  massKg: 115,
  dragAreaM2: 0.559,
  airDensityKgM3: 1.2,
  drivetrainEfficiency: 0.976,
  downhillCapKmh: 45,
};
const hub: HubModel = {
  power: { as: 'rating', ratedW: 3 },
  wheelCircumferenceM: 2.155,
  ratedCircumferenceM: 2.155,
  idleDragW10: 0.5,
  idleDragW30: 2.5,
};
const converter: ConverterModel = {
  efficiency: 0.8,
  startSpeedKmh: 10,
  outputW: 5,
  load: 'rated',
  seriesCapacitorUF: 0,
};
const wheel = generatorWheel(hub, converter);
const plain: Ride = { riderW: 110, bare, loaded: bare, wheel: null };
const withHub: Ride = { ...plain, wheel };
const heavier = (kg: number): RideModel => ({ ...bare, massKg: bare.massKg + kg });

const calm: Surroundings = {
  pavedRolling: 0.0077,
  surfaces: terrainClasses['flat-paved'].surfaces,
  winds: windsOf({ as: 'calm' }),
};
const inWind: Surroundings = { ...calm, winds: windsOf({ as: 'around', windKmh: 20 }) };
const classCourse = (name: TerrainClass, around = calm): Course =>
  courseOfClass(terrainClasses[name].grades, around);

/** A track of pieces of 20 km, each at one grade, all of it recorded at one speed or at rider power. */
function track(gradesPct: readonly number[], speedKmh: number | null = null): Course {
  const pieces = gradesPct.map((gradePct): TrackPiece => ({
    distanceKm: 20,
    stretches: [{ gradePct, speedKmh, share: 1 }],
  }));
  return courseOfTrack(pieces, null, true, calm);
}

const anyRidden = fc
  .record({
    pieces: anyPieces,
    around: fc.constantFrom(calm, inWind),
    bare: anyRide,
    addedKg: fc.integer({ min: 0, max: 15 }),
  })
  .map(({ pieces, around, bare, addedKg }) => ({
    pieces,
    around,
    bare,
    loaded: { ...bare, massKg: bare.massKg + addedKg },
  }));
const anyWheel = fc.tuple(anyHub, anyConverter).map(([each, its]) => generatorWheel(each, its));
const anyDays = fc.integer({ min: 1, max: 30 });

describe('a rider at the start speed of the converter', () => {
  // On the flat 94 W give 18.47 km/h with the hub off; charging from 18 km/h on takes more than that.
  const slowStart = generatorWheel(hub, { ...converter, startSpeedKmh: 18, load: 'tracking' });
  const at = (riderW: number): RiddenCourse =>
    rideCourse(track([0]), { ...plain, riderW, wheel: slowStart }, 1);

  it('charges for as much of the time as uses the power up', () => {
    const { on, plugW, aboveStartShare, power } = at(94);
    expectNear(on!.speedKmh, 18, 1e-6, 'speed, km/h');
    expect(aboveStartShare).toBeGreaterThan(0.2);
    expect(aboveStartShare).toBeLessThan(0.9);
    expectNear(plugW, aboveStartShare * slowStart.plugW(18), 1e-6, 'at the plug, W');
    expectNear(power.riderW, 94, 1e-3, 'rider, W');
  });
  it('loses nothing by a little more power', () => {
    let before = at(85).plugW;
    for (let riderW = 85.25; riderW <= 105; riderW += 0.25) {
      const { plugW } = at(riderW);
      expect(plugW).toBeGreaterThanOrEqual(before - 1e-9);
      expect(plugW - before).toBeLessThan(0.4);
      before = plugW;
    }
  });
});

describe('rideCourse()', () => {
  it('pushes the whole way without power on the flat', () => {
    const ridden = rideCourse(track([0]), { ...withHub, riderW: 0 }, 1);
    expect(ridden.on!.speedKmh).toBe(4);
    expect(ridden).toMatchObject({ plugW: 0, pushingShare: 1, brakingShare: 0, aboveStartShare: 0 });
  });
  it('brakes the whole way down a wall', () => {
    const ridden = rideCourse(track([-25]), withHub, 1);
    expectNear(ridden.on!.speedKmh, 45, 1e-9, 'speed, km/h');
    expect(ridden).toMatchObject({ pushingShare: 0, brakingShare: 1, aboveStartShare: 1 });
    expect(ridden.on!.laterShare).toBe(0);
  });
  it('gives no power and no hub pace on a plain wheel', () => {
    const ridden = rideCourse(classCourse('rolling'), plain, 1);
    expect(ridden).toMatchObject({ off: null, on: null, plugW: 0, aboveStartShare: 0 });
  });
  it('loses time but gives nothing through a hub without converter', () => {
    const ridden = rideCourse(classCourse('rolling'), { ...plain, wheel: generatorWheel(hub, null) }, 1);
    expect(ridden).toMatchObject({ plugW: 0, aboveStartShare: 0 });
    expect(ridden.on!.laterShare).toBeGreaterThan(0);
    expect(ridden.on).toEqual(ridden.off);
  });
  it('is no later with a kit that weighs nothing', () => {
    expect(rideCourse(classCourse('mountain'), plain, 1).loaded.laterShare).toBe(0);
  });
  it('is later by more mass in mountains than on the flat', () => {
    const later = (name: TerrainClass): number =>
      rideCourse(classCourse(name), { ...plain, loaded: heavier(2) }, 1).loaded.laterShare;
    expect(later('flat-paved')).toBeGreaterThan(0);
    expect(later('mountain')).toBeGreaterThan(2 * later('flat-paved'));
  });
  it('says apart what mass and what drag cost', () => {
    const { loaded, off, on } = rideCourse(classCourse('rolling'), { ...withHub, loaded: heavier(1) }, 1);
    expect(loaded.laterShare).toBeGreaterThan(0);
    expect(off!.laterShare).toBeGreaterThan(loaded.laterShare);
    expect(on!.laterShare).toBeGreaterThan(off!.laterShare);
  });
  it('gives less where the drag of the hub slows it', () => {
    // The power at the speed of the plain wheel would count drag as free.
    const course = track([0]);
    const free = wheel.plugW(rideCourse(course, plain, 1).loaded.speedKmh);
    const coupled = rideCourse(course, withHub, 1);
    expect(coupled.plugW).toBeLessThan(free);
    expectNear(coupled.plugW, wheel.plugW(coupled.on!.speedKmh), 1e-9, 'at the plug, W');
  });
  it('goes slower in a wind from all sides than in calm', () => {
    const speed = (around: Surroundings): number =>
      rideCourse(classCourse('flat-paved', around), plain, 1).loaded.speedKmh;
    expect(speed(inWind)).toBeLessThan(speed(calm));
  });
  it('takes its mean by time: half the distance uphill counts more', () => {
    const ridden = rideCourse(track([0, 5]), withHub, 1);
    const [flat, climb] = ridden.speedKmh;
    expectNear(ridden.on!.speedKmh, 40 / (20 / flat! + 20 / climb!), 1e-9, 'mean speed, km/h');
    expectNear(ridden.aboveStartShare, 20 / flat! / (20 / flat! + 20 / climb!), 1e-9, 'share of the time');
  });
});

describe('rideCourse() at recorded speeds', () => {
  it('leaves them as recorded when nothing is added', () => {
    const { bare: without, loaded, speedKmh } = rideCourse(track([3], 11), plain, 1);
    expectNear(without.speedKmh, 11, 1e-9, 'without the kit, km/h');
    expectNear(loaded.speedKmh, 11, 1e-6, 'with the kit, km/h');
    expectNear(speedKmh[0]!, 11, 1e-6, 'as ridden, km/h');
  });
  it('minds neither the rider’s power nor a braking limit', () => {
    const ridden = rideCourse(track([-8], 60), { ...withHub, riderW: 30 }, 1);
    expectNear(ridden.on!.speedKmh, 60, 1e-9, 'speed, km/h');
    expect(ridden.brakingShare).toBe(0);
  });
  it('goes slower uphill with a kit', () => {
    const { loaded, on } = rideCourse(track([4], 10), { ...withHub, loaded: heavier(3) }, 1);
    expect(loaded.speedKmh).toBeLessThan(10);
    expect(on!.speedKmh).toBeLessThan(loaded.speedKmh);
  });
  it('stays where the rider braked', () => {
    const { loaded, on } = rideCourse(track([-8], 30), { ...withHub, loaded: heavier(3) }, 1);
    expectNear(loaded.speedKmh, 30, 1e-9, 'with the kit, km/h');
    expectNear(on!.speedKmh, 30, 1e-9, 'charging, km/h');
  });
});

describe('stages of a ridden course', () => {
  it('differ where the pieces of a track do', () => {
    const { stages } = rideCourse(track([5, 0]), withHub, 2);
    expect(stages).toHaveLength(2);
    expect(stages[1]!.speedKmh).toBeGreaterThan(stages[0]!.speedKmh);
    expect(stages[1]!.plugW).toBeGreaterThan(stages[0]!.plugW);
  });
  it('are all alike on a terrain class', () => {
    const { on, plugW, stages } = rideCourse(classCourse('hilly'), withHub, 5);
    expect(stages).toHaveLength(5);
    for (const stage of stages) {
      expectNear(stage.speedKmh, on!.speedKmh, 1e-9, 'speed, km/h');
      expectNear(stage.plugW, plugW, 1e-9, 'at the plug, W');
    }
  });
  it('may be more than the pieces', () => {
    const { stages } = rideCourse(track([3]), withHub, 30);
    expect(stages).toHaveLength(30);
    for (const { speedKmh } of stages) expectNear(speedKmh, stages[0]!.speedKmh, 1e-9, 'speed, km/h');
  });
});

describe('any course ridden', () => {
  it('is never done sooner with a hub, off or charging', () => {
    fc.assert(
      fc.property(anyRidden, anyRiderW, anyWheel, ({ pieces, around, ...models }, riderW, its) => {
        const course = courseOfTrack(pieces, null, true, around);
        const { loaded, off, on } = rideCourse(course, { riderW, ...models, wheel: its }, 1);
        expect(off!.speedKmh).toBeLessThanOrEqual(loaded.speedKmh * (1 + 1e-12));
        expect(on!.speedKmh).toBeLessThanOrEqual(off!.speedKmh * (1 + 1e-12));
      }),
    );
  });
  it('adds up: km, hours, means and stages', () => {
    fc.assert(
      fc.property(
        anyRidden,
        anyRiderW,
        anyWheel,
        anyDays,
        ({ pieces, around, ...models }, riderW, its, days) => {
          const course = courseOfTrack(pieces, null, true, around);
          const ridden = rideCourse(course, { riderW, ...models, wheel: its }, days);
          const hours = ridden.hours.reduce((sum, each) => sum + each, 0);
          const km = pieces.reduce((sum, { distanceKm }) => sum + distanceKm, 0);
          const mean = (of: (stage: RiddenCourse['stages'][number]) => number): number =>
            ridden.stages.reduce((sum, stage) => sum + of(stage), 0) / days;
          expectNear(ridden.km, km, 1e-9 * km, 'distance, km');
          expectNear(ridden.on!.speedKmh, km / hours, 1e-9 * (km / hours), 'mean speed, km/h');
          expectNear(
            mean(({ speedKmh }) => speedKmh),
            km / hours,
            1e-9 * (km / hours),
            'stages, km/h',
          );
          expectNear(
            mean(({ plugW }) => plugW),
            ridden.plugW,
            1e-9,
            'stages, W',
          );
        },
      ),
    );
  });
  it('keeps its shares of the time within 0 and 1', () => {
    fc.assert(
      fc.property(anyRidden, anyRiderW, anyWheel, ({ pieces, around, ...models }, riderW, its) => {
        const ridden = rideCourse(
          courseOfTrack(pieces, null, true, around),
          { riderW, ...models, wheel: its },
          1,
        );
        for (const share of [ridden.aboveStartShare, ridden.pushingShare, ridden.brakingShare]) {
          expect(share).toBeGreaterThanOrEqual(0);
          expect(share).toBeLessThanOrEqual(1 + 1e-12);
        }
        expect(ridden.pushingShare + ridden.brakingShare).toBeLessThanOrEqual(1 + 1e-12);
      }),
    );
  });
  it('is the same whole in whatever order its pieces come', () => {
    fc.assert(
      fc.property(anyRidden, anyRiderW, anyWheel, ({ pieces, around, ...models }, riderW, its) => {
        const ridden = (order: readonly TrackPiece[]): RiddenCourse =>
          rideCourse(courseOfTrack(order, null, true, around), { riderW, ...models, wheel: its }, 1);
        const [there, back] = [ridden(pieces), ridden(pieces.toReversed())];
        expectNear(back.on!.speedKmh, there.on!.speedKmh, 1e-9 * there.on!.speedKmh, 'speed, km/h');
        expectNear(back.plugW, there.plugW, 1e-9, 'at the plug, W');
        expectNear(back.aboveStartShare, there.aboveStartShare, 1e-9, 'share above the start');
      }),
    );
  });
});
