import { describe, it } from 'vitest';
import { radPerDeg } from '../../src-main/model/angle.ts';
import { dayOfYear, msPerDay } from '../../src-main/model/sun/calendar.ts';
import { faoSun } from '../../src-main/model/sun/extraterrestrial.ts';
import { sunOfDay } from '../../src-main/model/sun/position.ts';
import { expectNear } from '../support/near.ts';

/** Years over which the day-number formulas were compared with an ephemeris: one whole round of leap years. */
const years = [2023, 2024, 2025, 2026] as const;
const noonOfDay = (year: number, dayNumber: number): number => Date.UTC(year, 0, dayNumber, 12);

/*
 * Spencer 1971, Search 2(5):172, coefficients as read in the source of pvlib-python; the row of day 1 is also that of the Bird
 * clear-sky table in its tests (tests/data/BIRD_08_16_2012.csv). Declination in degrees, equation of time in minutes, inverse
 * distance squared.
 */
// prettier-ignore
const spencerRows = [
  { day: 1, declination: -23.0586, equationOfTime: -2.92, distanceFactor: 1.03505 },
  { day: 17, declination: -20.9036, equationOfTime: -9.34, distanceFactor: 1.03404 },
  { day: 34, declination: -16.7638, equationOfTime: -13.494, distanceFactor: 1.03002 },
  { day: 44, declination: -13.6284, equationOfTime: -14.266, distanceFactor: 1.02638 },
  { day: 75, declination: -2.042, equationOfTime: -9.366, distanceFactor: 1.01079 },
  { day: 105, declination: 9.4808, equationOfTime: -0.256, distanceFactor: 0.99323 },
  { day: 135, declination: 18.6736, equationOfTime: 3.912, distanceFactor: 0.97794 },
  { day: 172, declination: 23.452, equationOfTime: -1.344, distanceFactor: 0.96744 },
  { day: 198, declination: 21.3456, equationOfTime: -6.02, distanceFactor: 0.9673 },
  { day: 228, declination: 13.9893, equationOfTime: -4.695, distanceFactor: 0.97467 },
  { day: 258, declination: 3.343, equationOfTime: 4.631, distanceFactor: 0.98859 },
  { day: 288, declination: -8.2177, equationOfTime: 14.391, distanceFactor: 1.00592 },
  { day: 318, declination: -18.0409, equationOfTime: 15.302, distanceFactor: 1.02222 },
  { day: 355, declination: -23.4199, equationOfTime: 2.155, distanceFactor: 1.03412 },
];

describe('the ephemeris against Spencer’s day-number formulas', () => {
  // Worst errors of the formulas over these years: 0.54 degrees and 0.87 min. The distance formula swings between 0.9666 and 1.0351,
  // an orbit of eccentricity 0.0167 between 0.9674 and 1.0343: 0.0008; two thirds of a day, by which the dates differ, add 0.0004.
  it.each(spencerRows)('lies within the formulas’ own error on day $day', (row) => {
    for (const year of years) {
      const sun = sunOfDay(noonOfDay(year, row.day));
      expectNear(sun.declinationRad / radPerDeg, row.declination, 0.54, `declination ${year}, degrees`);
      expectNear(sun.equationOfTimeMin, row.equationOfTime, 0.87, `equation of time ${year}, min`);
      expectNear(sun.distanceFactor, row.distanceFactor, 0.0012, `inverse distance squared ${year}`);
    }
  });
});

/*
 * Iqbal 1983, An Introduction to Solar Radiation, table 4.2.1: characteristic days and their declination, degrees. The mean over
 * a round of leap years is compared, since a date swings by a day within it. Spencer's formula lies within 0.25 degrees of the
 * table and within 0.54 of the ephemeris, so the table may lie 0.79 from it.
 */
const characteristicDays = [
  { date: '17 January', month: 0, day: 17, declination: -20.84 },
  { date: '14 February', month: 1, day: 14, declination: -13.32 },
  { date: '15 March', month: 2, day: 15, declination: -2.4 },
  { date: '15 April', month: 3, day: 15, declination: 9.46 },
  { date: '15 May', month: 4, day: 15, declination: 18.78 },
  { date: '10 June', month: 5, day: 10, declination: 23.04 },
  { date: '18 July', month: 6, day: 18, declination: 21.11 },
  { date: '18 August', month: 7, day: 18, declination: 13.28 },
  { date: '18 September', month: 8, day: 18, declination: 1.97 },
  { date: '19 October', month: 9, day: 19, declination: -9.84 },
  { date: '18 November', month: 10, day: 18, declination: -19.02 },
  { date: '13 December', month: 11, day: 13, declination: -23.12 },
];

describe('the characteristic days of Iqbal', () => {
  it.each(characteristicDays)('have their printed declination on $date', ({ month, day, declination }) => {
    const found = years.map((year) => sunOfDay(Date.UTC(year, month, day, 12)).declinationRad / radPerDeg);
    const mean = found.reduce((sum, each) => sum + each, 0) / years.length;
    expectNear(mean, declination, 0.79, 'mean declination, degrees');
  });
});

describe('the sun of FAO-56 against the ephemeris', () => {
  it.each(years)('keeps within 1.45 degrees through the year %d', (year) => {
    const worst = { errorDeg: 0 };
    for (let noon = noonOfDay(year, 1); noon < noonOfDay(year + 1, 1); noon += msPerDay) {
      const error = faoSun(dayOfYear(noon)).declinationRad - sunOfDay(noon).declinationRad;
      worst.errorDeg = Math.max(worst.errorDeg, Math.abs(error) / radPerDeg);
    }
    // The worst error reckoned for FAO-56 eq. 24 over these years, 1.45 degrees, is the tolerance.
    expectNear(worst.errorDeg, 0, 1.45, 'worst declination error, degrees');
  });
});
