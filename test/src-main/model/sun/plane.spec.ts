import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { noonOf } from '../../../../src-main/model/sun/calendar.ts';
import { meanOverHeadings, planeCourse, type Plane } from '../../../../src-main/model/sun/plane.ts';
import { sunCourse } from '../../../../src-main/model/sun/sun-course.ts';
import { expectNear } from '../../../support/near.ts';
import { anyDate, anyLatDeg } from '../../../support/random-sun.ts';

const anyTilt = fc.double({ min: 0, max: 90, noNaN: true });
const anyPlane: fc.Arbitrary<Plane> = fc.oneof(
  fc.constant<Plane>({ as: 'flat' }),
  fc.constant<Plane>({ as: 'aimed' }),
  anyTilt.map((tiltDeg): Plane => ({ as: 'any-heading', tiltDeg })),
  fc
    .tuple(anyTilt, fc.double({ min: 0, max: 360, noNaN: true }))
    .map(([tiltDeg, azimuthDeg]): Plane => ({ as: 'fixed', tiltDeg, azimuthDeg })),
);
const courseAt = (lat: number, date: string) => sunCourse(lat, 0, noonOf(date), 96);
const sum = (values: Float64Array): number => values.reduce((total, each) => total + each, 0);

describe('planeCourse()', () => {
  it('keeps every cosine in 0 to 1, and 0 while the sun is down', () => {
    fc.assert(
      fc.property(anyLatDeg, anyDate, anyPlane, (lat, date, plane) => {
        const course = courseAt(lat, date);
        const { cosTilt, cosIncidence } = planeCourse(course, plane);
        for (const cosines of [cosTilt, cosIncidence])
          expect([...cosines].every((each) => each >= 0 && each <= 1 + 1e-12)).toBe(true);
        course.cosZenith.forEach((cosine, step) => {
          if (cosine === 0) expect(cosIncidence[step]).toBe(0);
        });
      }),
    );
  });

  it('gives a level plane the same light whichever way it is named', () => {
    const course = courseAt(48, '2027-09-10');
    const flat = planeCourse(course, { as: 'flat' });
    for (const plane of [
      { as: 'fixed', tiltDeg: 0, azimuthDeg: 77 },
      { as: 'any-heading', tiltDeg: 0 },
    ] as const)
      planeCourse(course, plane).cosIncidence.forEach((cosine, step) =>
        expectNear(cosine, flat.cosIncidence[step]!, 1e-9, 'cosine of incidence'),
      );
  });

  it('faces the sun the better the nearer the equator it looks', () => {
    const facing = (lat: number, azimuthDeg: number): number =>
      sum(planeCourse(courseAt(lat, '2027-03-20'), { as: 'fixed', tiltDeg: 45, azimuthDeg }).cosIncidence);
    expect(facing(48, 180)).toBeGreaterThan(facing(48, 90));
    expect(facing(48, 90)).toBeGreaterThan(facing(48, 0));
    expect(facing(-48, 0)).toBeGreaterThan(facing(-48, 180));
  });

  it('has its morning on a plane that faces east', () => {
    const { cosIncidence } = planeCourse(courseAt(40, '2027-06-10'), {
      as: 'fixed',
      tiltDeg: 60,
      azimuthDeg: 90,
    });
    expect(sum(cosIncidence.slice(0, 48))).toBeGreaterThan(3 * sum(cosIncidence.slice(48)));
  });
});

describe('meanOverHeadings()', () => {
  it('is the mean of the cosines over all headings', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 1, noNaN: true }), anyTilt, (cosZenith, tiltDeg) => {
        const tilt = (tiltDeg * Math.PI) / 180;
        const headings = 720;
        const mean =
          Array.from({ length: headings }, (_, at) => {
            const turn = ((at + 0.5) / headings) * 2 * Math.PI;
            const across = Math.sqrt(1 - cosZenith ** 2) * Math.sin(tilt) * Math.cos(turn);
            return Math.max(0, cosZenith * Math.cos(tilt) + across);
          }).reduce((total, each) => total + each, 0) / headings;
        expectNear(meanOverHeadings(cosZenith, tiltDeg), mean, 1e-4, 'mean cosine');
      }),
    );
  });

  it('never beats aiming and, upright, still sees a low sun', () => {
    expect(meanOverHeadings(0.2, 90)).toBeGreaterThan(0.2);
    expect(meanOverHeadings(0.2, 90)).toBeLessThan(1);
  });
});
