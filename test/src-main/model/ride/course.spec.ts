import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TerrainClass } from '../../../../shared-types/tour.ts';
import type { TrackPiece } from '../../../../shared-types/track.ts';
import {
  courseOfClass,
  courseOfTrack,
  type Course,
  type Surroundings,
  type Way,
} from '../../../../src-main/model/ride/course.ts';
import { terrainClasses } from '../../../../src-main/model/ride/terrain.ts';
import { windsOf } from '../../../../src-main/model/ride/winds.ts';
import { expectNear } from '../../../support/near.ts';
import { anyPieces } from '../../../support/random-ride.ts';

const paved: Surroundings = {
  pavedRolling: 0.0077,
  surfaces: terrainClasses['flat-paved'].surfaces,
  winds: windsOf({ as: 'calm' }),
};
const roughInWind: Surroundings = {
  pavedRolling: 0.0077,
  surfaces: terrainClasses['rough-track'].surfaces,
  winds: windsOf({ as: 'around', windKmh: 20 }),
};
const anyAround = fc.constantFrom(paved, roughInWind);
const anyClass = fc.constantFrom(...(Object.keys(terrainClasses) as TerrainClass[]));

const piece = (distanceKm: number, ...stretches: TrackPiece['stretches']): TrackPiece => ({
  distanceKm,
  stretches,
});
const stretch = (gradePct: number, share: number, speedKmh: number | null = null) => ({
  gradePct,
  share,
  speedKmh,
});

/** Distance of each way, km. */
function kmByWay({ ways, pieces }: Course): ReadonlyMap<Way, number> {
  const km = new Map(ways.map((way) => [way, 0]));
  for (const { parts } of pieces)
    for (const part of parts) km.set(ways[part.way]!, km.get(ways[part.way]!)! + part.km);
  return km;
}

function kmOf(course: Course, holds: (way: Way) => boolean = () => true): number {
  return [...kmByWay(course)].reduce((sum, [way, km]) => sum + (holds(way) ? km : 0), 0);
}

describe('courseOfTrack()', () => {
  const climbAndValley = [piece(10, stretch(5, 0.5), stretch(0, 0.5, 20)), piece(30, stretch(0, 1, 20))];

  it('takes the slopes of the class where heights are not known', () => {
    const slopes = terrainClasses.rolling.grades;
    const course = courseOfTrack([piece(10, stretch(0, 1))], slopes, true, paved);
    for (const { gradePct, share } of slopes)
      expectNear(
        kmOf(course, ({ grade }) => grade === gradePct / 100),
        10 * share,
        1e-9,
        `km at ${gradePct} %`,
      );
  });
  it('keeps a recorded speed on unknown slopes', () => {
    const course = courseOfTrack([piece(10, stretch(0, 1, 18))], terrainClasses.hilly.grades, true, paved);
    expect(course.ways).toHaveLength(1);
    expect(course.ways[0]).toMatchObject({ grade: 0, recordedKmh: 18 });
  });
  it('forgets recorded speeds when they are not to be taken', () => {
    const { ways } = courseOfTrack(climbAndValley, null, false, paved);
    expect(ways.map(({ recordedKmh }) => recordedKmh)).toEqual([null, null]);
  });
  it('takes recorded speeds where there are any', () => {
    const course = courseOfTrack(climbAndValley, null, true, paved);
    expectNear(
      kmOf(course, ({ recordedKmh }) => recordedKmh === 20),
      35,
      1e-9,
      'recorded, km',
    );
    expectNear(
      kmOf(course, ({ recordedKmh }) => recordedKmh === null),
      5,
      1e-9,
      'at rider power, km',
    );
  });
  it.each([0.4, 0.49, -2.3, 7.1234, -24.9])(
    'parts a grade of %d per cent between those listed, keeping its climb',
    (pct) => {
      const course = courseOfTrack([piece(10, stretch(pct, 0.5), stretch(pct, 0.5, 20))], null, true, paved);
      const km = kmByWay(course);
      const climbM = [...km].reduce((sum, [{ grade }, each]) => sum + grade * each * 1000, 0);
      expectNear(climbM, pct * 100, 1e-3, 'climb, m');
      for (const { grade } of km.keys()) expectNear(grade * 100, pct, 0.2, 'grade, %');
      expectNear(
        kmOf(course, ({ recordedKmh }) => recordedKmh === 20),
        5,
        1e-9,
        'recorded, km',
      );
    },
  );
  it('lists no more ways for a track of many grades than there are grades', () => {
    const pieces = Array.from({ length: 40 }, (_, index) =>
      piece(10, ...Array.from({ length: 50 }, (_none, cell) => stretch(cell - 25 + index / 41, 1 / 50))),
    );
    expect(courseOfTrack(pieces, null, false, paved).ways.length).toBeLessThanOrEqual(251);
  });
  it('lists a way once, however often it is ridden', () => {
    const flat = piece(5, stretch(0, 1));
    const course = courseOfTrack([flat, flat, flat], null, true, paved);
    expect(course.ways).toHaveLength(1);
    expect(course.pieces).toHaveLength(3);
  });
  it('gives a recorded way the mean of its ground in calm air', () => {
    // Wind and ground were there when the speed was recorded. 0.6 x 0.005 + 0.4 x 0.012 come on top of pavement.
    const { ways } = courseOfTrack([piece(10, stretch(2, 1, 15))], null, true, roughInWind);
    expect(ways).toHaveLength(1);
    expect(ways[0]!.headwindMs).toBe(0);
    expectNear(ways[0]!.rollingCoefficient, 0.0077 + 0.0078, 1e-12, 'rolling resistance');
  });
  it('spreads a computed way over every ground and wind', () => {
    const course = courseOfTrack([piece(10, stretch(2, 1))], null, true, roughInWind);
    expect(course.ways).toHaveLength(2 * 5);
    const rough = kmOf(course, ({ rollingCoefficient }) => rollingCoefficient > 0.0077 + 0.01);
    expectNear(rough, 4, 1e-9, 'on rough ground, km');
    expectNear(
      kmOf(course, ({ headwindMs }) => headwindMs > 0),
      10 * (3 / 8),
      1e-9,
      'against the wind, km',
    );
  });
  it('keeps the km of every piece and of the whole', () => {
    fc.assert(
      fc.property(
        anyPieces,
        fc.boolean(),
        fc.option(anyClass),
        anyAround,
        (pieces, recorded, name, around) => {
          const slopes = name === null ? null : terrainClasses[name].grades;
          const course = courseOfTrack(pieces, slopes, recorded, around);
          const whole = pieces.reduce((sum, { distanceKm }) => sum + distanceKm, 0);
          expectNear(kmOf(course), whole, 1e-9 * whole, 'km by way');
          course.pieces.forEach(({ parts }, index) => {
            const km = parts.reduce((sum, part) => sum + part.km, 0);
            expectNear(km, pieces[index]!.distanceKm, 1e-9 * whole, 'km of the piece');
          });
        },
      ),
    );
  });
  it('names no two ways alike', () => {
    fc.assert(
      fc.property(anyPieces, fc.boolean(), anyAround, (pieces, recorded, around) => {
        const { ways } = courseOfTrack(pieces, null, recorded, around);
        expect(new Set(ways.map((way) => JSON.stringify(way))).size).toBe(ways.length);
      }),
    );
  });
});

describe('courseOfClass()', () => {
  it('is one piece of a kilometre', () => {
    fc.assert(
      fc.property(anyClass, anyAround, (name, around) => {
        const course = courseOfClass(terrainClasses[name].grades, around);
        expect(course.pieces).toHaveLength(1);
        expectNear(kmOf(course), 1, 1e-12, 'km');
      }),
    );
  });
  it('records no speed and keeps the shares of its grades', () => {
    const { grades, surfaces } = terrainClasses.mountain;
    const course = courseOfClass(grades, { ...roughInWind, surfaces });
    expect(course.ways.every(({ recordedKmh }) => recordedKmh === null)).toBe(true);
    for (const { gradePct, share } of grades)
      expectNear(
        kmOf(course, ({ grade }) => grade === gradePct / 100),
        share,
        1e-12,
        `km at ${gradePct} %`,
      );
  });
});
