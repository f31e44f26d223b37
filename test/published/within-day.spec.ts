import { describe, it } from 'vitest';
import { radPerDeg } from '../../src-main/model/angle.ts';
import { cosZenithHours, daylightHours } from '../../src-main/model/sun/extraterrestrial.ts';
import { cosZenithOf } from '../../src-main/model/sun/position.ts';
import { diffuseRatio, globalOverDiffuseRatio } from '../../src-main/model/sun/within-day.ts';
import { expectNear } from '../support/near.ts';
import { hourlyRatios, hoursFromNoon } from './tables/hourly-ratios.ts';

/** Latitude and declination of a day, rad. */
interface Day {
  readonly lat: number;
  readonly declination: number;
}

/** A day with a given sunset hour angle: at 45 degrees its cosine is minus the tangent of the declination. */
function dayOf(sunsetRad: number): Day {
  return { lat: 45 * radPerDeg, declination: Math.atan(-Math.cos(sunsetRad)) };
}

function diffuseAt(hoursFrom: number, { lat, declination }: Day): number {
  const cosZenith = cosZenithOf(hoursFrom * 15 * radPerDeg, declination, lat);
  return diffuseRatio(cosZenith, cosZenithHours(lat, declination));
}

function globalAt(hoursFrom: number, day: Day, sunsetRad: number): number {
  return diffuseAt(hoursFrom, day) * globalOverDiffuseRatio(hoursFrom * 15 * radPerDeg, sunsetRad);
}

/** Sum over the day in minutes; the ratios are per hour. */
function overDay(ratio: (hoursFrom: number) => number): number {
  const minutes = Array.from({ length: 1440 }, (_, minute) => (minute + 0.5) / 60 - 12);
  return minutes.reduce((sum, hoursFrom) => sum + ratio(hoursFrom) / 60, 0);
}

describe('hourly ratios over the day', () => {
  // Printed to four decimals; 2e-4 covers their rounding and that of a and b.
  it.each(hourlyRatios)('are as published at a sunset angle of $sunsetDeg', (row) => {
    const sunset = row.sunsetDeg * radPerDeg;
    const day = dayOf(sunset);
    row.global.forEach((expected, column) => {
      const hours = hoursFromNoon[column]!;
      expectNear(globalAt(hours, day, sunset), expected, 2e-4, `global ${hours} h from noon, per hour`);
    });
    row.diffuse.forEach((expected, column) => {
      const hours = hoursFromNoon[column]!;
      expectNear(diffuseAt(hours, day), expected, 2e-4, `diffuse ${hours} h from noon, per hour`);
    });
  });

  it.each(hourlyRatios)('add up as published at a sunset angle of $sunsetDeg', (row) => {
    const sunset = row.sunsetDeg * radPerDeg;
    const day = dayOf(sunset);
    const global = overDay((hours) => globalAt(hours, day, sunset));
    expectNear(global, row.globalOverDay, 2e-4, 'global over the day');
    expectNear(
      overDay((hours) => diffuseAt(hours, day)),
      1,
      2e-4,
      'diffuse over the day',
    );
  });
});

/*
 * Duffie & Beckman, example 2.13.1: Melbourne, 38 S, mean day of January (declination -20.9 degrees). The question was read;
 * the answer is the published equations reckoned outside the project, in line with the book's 0.076.
 */
describe('the January day of example 2.13.1', () => {
  const day = { lat: -38 * radPerDeg, declination: -20.9 * radPerDeg };
  it('lasts as long as its sunset angle of 107.37 says', () =>
    expectNear(daylightHours(day.lat, day.declination), 14.32, 0.01, 'day length, h'));
  it('has 0.0759 of its light between 8 and 9', () =>
    expectNear(globalAt(-3.5, day, 107.37 * radPerDeg), 0.0759, 2e-4, 'share of the hour'));
});
