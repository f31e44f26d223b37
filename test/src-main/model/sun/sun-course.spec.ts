import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { noonOf } from '../../../../src-main/model/sun/calendar.ts';
import { sunCourse } from '../../../../src-main/model/sun/sun-course.ts';
import { expectNear } from '../../../support/near.ts';
import { anyDate, anyHeightM, anyLatDeg, anyStepsPerDay } from '../../../support/random-sun.ts';

const sum = (values: Float64Array): number => values.reduce((total, each) => total + each, 0);
const course = (latDeg: number, date: string, heightM = 0) => sunCourse(latDeg, heightM, noonOf(date), 96);

describe('sunCourse()', () => {
  it('holds nothing but finite numbers on any day anywhere', () => {
    fc.assert(
      fc.property(anyLatDeg, anyHeightM, anyDate, anyStepsPerDay, (lat, height, date, steps) => {
        const values: readonly (number | Float64Array)[] = Object.values(
          sunCourse(lat, height, noonOf(date), steps),
        );
        for (const value of values)
          expect(typeof value === 'number' ? Number.isFinite(value) : value.every(Number.isFinite)).toBe(
            true,
          );
      }),
    );
  });

  it('has shares that add up to one, or no light at all', () => {
    fc.assert(
      fc.property(anyLatDeg, anyDate, anyStepsPerDay, (lat, date, steps) => {
        const { globalShare, diffuseShare, extraterrestrialWhM2, lightFrom, lightTo } = sunCourse(
          lat,
          0,
          noonOf(date),
          steps,
        );
        const whole = extraterrestrialWhM2 > 0 ? 1 : 0;
        expectNear(sum(globalShare), whole, 1e-9, 'global');
        expectNear(sum(diffuseShare), whole, 1e-9, 'diffuse');
        expectNear(sum(globalShare.slice(lightFrom, lightTo)), whole, 1e-9, 'global within the light');
      }),
    );
  });

  it.each([-90, -75, 75, 90])('knows polar night and polar day at %d degrees', (lat) => {
    const [dark, bright] = lat > 0 ? ['2027-12-21', '2027-06-21'] : ['2027-06-21', '2027-12-21'];
    const night = course(lat, dark);
    const day = course(lat, bright);
    expect([night.extraterrestrialWhM2, night.lightTo, night.clearestClearness]).toEqual([0, 0, 0]);
    expectNear(day.sunsetRad, Math.PI, 1e-9, 'sunset hour angle, rad');
    expect([day.lightFrom, day.lightTo]).toEqual([0, 96]);
  });

  it('never lets through more than there is above the air', () => {
    fc.assert(
      fc.property(anyLatDeg, anyHeightM, anyDate, (lat, height, date) => {
        const { clearGlobalWm2, clearBeamWm2, cosZenith, normalWm2, clearestClearness } = course(
          lat,
          date,
          height,
        );
        clearGlobalWm2.forEach((watts, step) => {
          expect(watts).toBeLessThanOrEqual(normalWm2 * cosZenith[step]!);
          expect(clearBeamWm2[step]!).toBeLessThanOrEqual(normalWm2);
          expect(clearBeamWm2[step]! * cosZenith[step]!).toBeLessThanOrEqual(watts + 1e-9);
        });
        // Middles of steps stand for the day: a little more than the integral.
        expect(clearestClearness).toBeLessThanOrEqual(1.02);
      }),
    );
  });

  it('lets more through on a high plateau', () => {
    expect(course(35, '2027-08-01', 4500).clearestClearness).toBeGreaterThan(
      course(35, '2027-08-01', 0).clearestClearness + 0.05,
    );
  });

  it('takes 29 February and the days across new year', () => {
    const light = (date: string): number => course(40, date).extraterrestrialWhM2;
    expect(light('2028-02-29')).toBeGreaterThan(light('2028-02-28'));
    expect(light('2028-03-01')).toBeGreaterThan(light('2028-02-29'));
    expectNear(
      light('2028-01-01'),
      light('2027-12-31'),
      0.01 * light('2027-12-31'),
      'across new year, Wh/m2',
    );
  });

  it('mirrors the seasons over the equator', () => {
    expectNear(
      course(40, '2027-06-21').sunsetRad,
      course(-40, '2027-12-21').sunsetRad,
      0.003,
      'sunset hour angle, rad',
    );
  });
});
