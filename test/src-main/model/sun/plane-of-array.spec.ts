import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { noonOf } from '../../../../src-main/model/sun/calendar.ts';
import { createSky, fillSky } from '../../../../src-main/model/sun/day-sky.ts';
import { planeWm2, type Optics } from '../../../../src-main/model/sun/plane-of-array.ts';
import { planeCourse, type Plane } from '../../../../src-main/model/sun/plane.ts';
import { sunCourse } from '../../../../src-main/model/sun/sun-course.ts';
import { expectNear } from '../../../support/near.ts';
import { anyClearness, anyDate, anyLatDeg } from '../../../support/random-sun.ts';

const usual: Optics = { diffuse: 'hay-davies', groundReflectance: 0.2 };
const isotropic: Optics = { ...usual, diffuse: 'isotropic' };

/** Light on a plane over a whole day, Wh/m2. */
function dayWhM2(
  lat: number,
  date: string,
  clearness: number,
  plane: Plane,
  optics = usual,
  steps = 96,
): number {
  const course = sunCourse(lat, 0, noonOf(date), steps);
  const sky = createSky(steps);
  fillSky(course, clearness, sky);
  const lie = planeCourse(course, plane);
  let sum = 0;
  for (let step = 0; step < steps; step += 1) sum += planeWm2(course, sky, lie, step, optics);
  return sum * course.stepHours;
}

const flat = { as: 'flat' } as const;
const aimed = { as: 'aimed' } as const;

describe('light on a plane', () => {
  it('is finite and never above the sun outside the air', () => {
    fc.assert(
      fc.property(anyLatDeg, anyDate, anyClearness, (lat, date, clearness) => {
        const most = sunCourse(lat, 0, noonOf(date), 96).normalWm2 * 24;
        for (const plane of [flat, aimed, { as: 'any-heading', tiltDeg: 40 }] as const) {
          const light = dayWhM2(lat, date, clearness, plane);
          expect(light).toBeGreaterThanOrEqual(0);
          expect(light).toBeLessThanOrEqual(most);
        }
      }),
    );
  });

  it('is the global radiation on a flat panel', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -66, max: 66, noNaN: true }),
        anyDate,
        anyClearness,
        (lat, date, clearness) => {
          const course = sunCourse(lat, 0, noonOf(date), 96);
          const global = Math.min(clearness, course.clearestClearness) * course.extraterrestrialWhM2;
          expectNear(dayWhM2(lat, date, clearness, flat, isotropic), global, 1e-9 * (1 + global), 'Wh/m2');
          // Hay & Davies hold their beam ratio at 89 degrees of zenith, which costs a trace under the lowest sun.
          expectNear(dayWhM2(lat, date, clearness, flat), global, 0.001 * global + 0.1, 'Wh/m2');
        },
      ),
    );
  });

  it('never falls with a clearer sky, flat or aimed', () => {
    fc.assert(
      fc.property(
        anyLatDeg,
        anyDate,
        fc.double({ min: 0, max: 0.9, noNaN: true }),
        fc.constantFrom<Plane>(flat, aimed),
        (lat, date, clearness, plane) => {
          const dull = dayWhM2(lat, date, clearness, plane);
          expect(dayWhM2(lat, date, clearness + 0.05, plane)).toBeGreaterThanOrEqual(
            dull - 1e-6 * (1 + dull),
          );
        },
      ),
    );
  });

  it('is more on an aimed panel on a clear day', () => {
    fc.assert(
      fc.property(fc.double({ min: -60, max: 60, noNaN: true }), anyDate, (lat, date) => {
        expect(dayWhM2(lat, date, 0.7, aimed)).toBeGreaterThan(dayWhM2(lat, date, 0.7, flat));
      }),
    );
  });

  it('is less on an aimed panel under a sky all grey', () => {
    // An overcast sky shines from all sides; a tilted panel sees less of it (dark ground).
    const dark = { ...usual, groundReflectance: 0 };
    expect(dayWhM2(50, '2027-11-20', 0.1, aimed, dark)).toBeLessThan(
      dayWhM2(50, '2027-11-20', 0.1, flat, dark),
    );
  });

  it('grows with bright ground on a tilted panel only', () => {
    const snow = { ...usual, groundReflectance: 0.7 };
    expect(dayWhM2(60, '2027-03-20', 0.5, aimed, snow)).toBeGreaterThan(
      dayWhM2(60, '2027-03-20', 0.5, aimed),
    );
    expect(dayWhM2(60, '2027-03-20', 0.5, flat, snow)).toBe(dayWhM2(60, '2027-03-20', 0.5, flat));
  });

  it('is more round the sun than alike from all sides when aimed', () => {
    expect(dayWhM2(45, '2027-06-10', 0.6, aimed)).toBeGreaterThan(
      dayWhM2(45, '2027-06-10', 0.6, aimed, isotropic),
    );
  });

  it('changes little with the length of a step', () => {
    const fine = dayWhM2(45, '2027-05-10', 0.5, aimed, usual, 288);
    expectNear(dayWhM2(45, '2027-05-10', 0.5, aimed, usual, 24), fine, 0.02 * fine, 'Wh/m2');
  });
});
