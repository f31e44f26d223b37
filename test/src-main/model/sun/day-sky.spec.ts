import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { noonOf } from '../../../../src-main/model/sun/calendar.ts';
import { createSky, fillSky, type DaySky } from '../../../../src-main/model/sun/day-sky.ts';
import { sunCourse, type SunCourse } from '../../../../src-main/model/sun/sun-course.ts';
import { expectNear } from '../../../support/near.ts';
import { anyClearness, anyDate, anyHeightM, anyLatDeg, anyStepsPerDay } from '../../../support/random-sun.ts';

const sum = (values: Float64Array): number => values.reduce((total, each) => total + each, 0);

function skyOf(course: SunCourse, clearness: number): DaySky {
  const sky = createSky(course.cosZenith.length);
  fillSky(course, clearness, sky);
  return sky;
}

describe('fillSky()', () => {
  const anyCourse = fc
    .tuple(anyLatDeg, anyHeightM, anyDate, anyStepsPerDay)
    .map(([lat, height, date, steps]) => sunCourse(lat, height, noonOf(date), steps));

  it('is finite and never negative on any day anywhere', () => {
    fc.assert(
      fc.property(anyCourse, anyClearness, (course, clearness) => {
        const { globalWm2, diffuseWm2, beamNormalWm2 } = skyOf(course, clearness);
        for (const watts of [globalWm2, diffuseWm2, beamNormalWm2])
          expect(watts.every((each) => Number.isFinite(each) && each >= 0)).toBe(true);
      }),
    );
  });

  it('adds up to the day exactly, held at the cloudless day', () => {
    fc.assert(
      fc.property(anyCourse, anyClearness, (course, clearness) => {
        const wanted = Math.min(clearness, course.clearestClearness) * course.extraterrestrialWhM2;
        const got = sum(skyOf(course, clearness).globalWm2) * course.stepHours;
        expectNear(got, wanted, 1e-9 * (1 + wanted), 'global, Wh/m2');
      }),
    );
  });

  it('never passes the cloudless sky in any step', () => {
    fc.assert(
      fc.property(anyCourse, anyClearness, (course, clearness) => {
        const { globalWm2, beamNormalWm2 } = skyOf(course, clearness);
        globalWm2.forEach((watts, step) => {
          expect(watts).toBeLessThanOrEqual(course.clearGlobalWm2[step]! * (1 + 1e-9) + 1e-9);
          expect(beamNormalWm2[step]!).toBeLessThanOrEqual(course.clearBeamWm2[step]!);
        });
      }),
    );
  });

  it('parts every step into beam and diffuse without loss', () => {
    fc.assert(
      fc.property(anyCourse, anyClearness, (course, clearness) => {
        const { globalWm2, diffuseWm2, beamNormalWm2 } = skyOf(course, clearness);
        globalWm2.forEach((global, step) =>
          expectNear(
            diffuseWm2[step]! + beamNormalWm2[step]! * course.cosZenith[step]!,
            global,
            1e-9 * (1 + global),
            'parts, W/m2',
          ),
        );
      }),
    );
  });

  it('holds radiation above what the sun sends at the cloudless day', () => {
    const course = sunCourse(45, 0, noonOf('2027-06-10'), 96);
    expect(skyOf(course, 1)).toEqual(skyOf(course, course.clearestClearness));
  });

  it('leaves nothing of the day before in the scratch', () => {
    const course = sunCourse(45, 0, noonOf('2027-06-10'), 96);
    const used = skyOf(course, 0.7);
    fillSky(course, 0.2, used);
    expect(used).toEqual(skyOf(course, 0.2));
  });

  it('is brightest at solar noon and dark before sunrise', () => {
    const { globalWm2 } = skyOf(sunCourse(50, 0, noonOf('2027-04-15'), 24), 0.5);
    expect(globalWm2.indexOf(Math.max(...globalWm2))).toBeGreaterThanOrEqual(11);
    expect(globalWm2.indexOf(Math.max(...globalWm2))).toBeLessThanOrEqual(12);
    expect(globalWm2[3]).toBe(0);
  });
});
