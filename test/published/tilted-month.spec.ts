import { describe, it } from 'vitest';
import { radPerDeg } from '../../src-main/model/angle.ts';
import {
  cosZenithHours,
  extraterrestrialNormalWm2,
  sunsetHourAngleRad,
  whPerMJ,
} from '../../src-main/model/sun/extraterrestrial.ts';
import { planeWm2 } from '../../src-main/model/sun/plane-of-array.ts';
import { cosIncidence, type PlaneCourse } from '../../src-main/model/sun/plane.ts';
import { cosZenithOf, positionFromHourAngle } from '../../src-main/model/sun/position.ts';
import { diffuseRatio, globalOverDiffuseRatio, toShares } from '../../src-main/model/sun/within-day.ts';
import { expectNear } from '../support/near.ts';
import { cooperSun } from './cooper-day.ts';
import { madisonMonths, meanDays, type MadisonMonth } from './tables/duffie-beckman.ts';

/*
 * Duffie & Beckman, Solar Engineering of Thermal Processes, 4th ed., example 2.19.1: Madison, 43 N, a plane tilted by 60 degrees
 * facing south, isotropic sky, month by month. From the radiation on the ground to that on the plane, this runs the day's course,
 * the split of the day, the plane and its light in one chain.
 */
const latRad = 43 * radPerDeg;
const [tiltDeg, southDeg] = [60, 180] as const;
const stepHours = 5 / 60;
const stepsPerDay = 24 / stepHours;

/** How the book and we spread the beam over the day. */
type BeamWeight = 'outside the atmosphere' | 'hourly ratios';

/** Monthly diffuse share of Erbs, Klein & Duffie 1982, Solar Energy 28(4):293-302, which the example uses (ours is daily). */
function monthlyDiffuseShare(k: number, sunsetRad: number): number {
  return sunsetRad <= 81.4 * radPerDeg
    ? 1.391 - 3.56 * k + 4.189 * k ** 2 - 2.137 * k ** 3
    : 1.311 - 3.022 * k + 3.427 * k ** 2 - 1.821 * k ** 3;
}

const hourAngles = Float64Array.from(
  { length: stepsPerDay },
  (_, step) => ((step + 0.5) * stepHours - 12) * 15 * radPerDeg,
);

/** The plane under the sun of a day. */
function southSlope(declinationRad: number, cosZenith: Float64Array): PlaneCourse {
  return {
    cosTilt: cosZenith.map(() => Math.cos(tiltDeg * radPerDeg)),
    cosIncidence: hourAngles.map((angle, step) => {
      const sun = positionFromHourAngle(angle, declinationRad, latRad);
      return cosZenith[step]! > 0 ? Math.max(0, cosIncidence(sun, tiltDeg, southDeg)) : 0;
    }),
  };
}

/** Radiation on the plane, MJ/m2 a day. */
function tiltedMJm2(month: MadisonMonth, dayNumber: number, weight: BeamWeight): number {
  const { declinationRad, distanceFactor } = cooperSun(dayNumber);
  const sunsetRad = sunsetHourAngleRad(latRad, declinationRad);
  const cosZenith = hourAngles.map((angle) => Math.max(0, cosZenithOf(angle, declinationRad, latRad)));
  const dayHours = cosZenithHours(latRad, declinationRad);
  const diffuseShare = toShares(cosZenith.map((cosine) => diffuseRatio(cosine, dayHours)));
  const globalShare = toShares(
    diffuseShare.map((share, step) => share * globalOverDiffuseRatio(hourAngles[step]!, sunsetRad)),
  );
  const wholeWm2 = (month.horizontal * whPerMJ) / stepHours;
  const diffusePart = monthlyDiffuseShare(month.horizontal / month.outside, sunsetRad);
  const shares = weight === 'hourly ratios' ? globalShare : diffuseShare;
  const globalWm2 = shares.map((share) => share * wholeWm2);
  const diffuseWm2 = diffuseShare.map((share) => share * wholeWm2 * diffusePart);
  const beamNormalWm2 = globalWm2.map((global, step) =>
    cosZenith[step]! > 0 ? (global - diffuseWm2[step]!) / cosZenith[step]! : 0,
  );
  const sun = { cosZenith, normalWm2: extraterrestrialNormalWm2(distanceFactor) };
  const sky = { globalWm2, diffuseWm2, beamNormalWm2 };
  const optics = { diffuse: 'isotropic', groundReflectance: month.groundReflectance } as const;
  const plane = southSlope(declinationRad, cosZenith);
  const sumWm2 = globalWm2.reduce((sum, _, step) => sum + planeWm2(sun, sky, plane, step, optics), 0);
  return (sumWm2 * stepHours) / whPerMJ;
}

const cases = madisonMonths.map((month, index) => ({
  month,
  dayNumber: meanDays[index]!,
  name: new Date(Date.UTC(2023, index)).toLocaleString('en', { month: 'long', timeZone: 'UTC' }),
}));

describe('the tilted plane of Duffie & Beckman, example 2.19.1', () => {
  // Klein 1977 weighs the beam like the radiation outside the atmosphere. Equation and book agree within 0.05 MJ/m2; 0.08 allows for
  // the rounding of inputs.
  it.each(cases)('is as printed with Klein’s weights in $name', ({ month, dayNumber }) =>
    expectNear(tiltedMJm2(month, dayNumber, 'outside the atmosphere'), month.tilted, 0.08, 'H_T, MJ/m2'),
  );

  /*
   * Our chain spreads the beam by the hourly ratios (as Klein & Theilacker 1981, J. Solar Energy Eng. 103:29-33, do to improve on
   * this method): more of it near noon. Towards a south slope that takes light where the low winter sun gains most and adds it
   * where the high summer sun does. Reckoned before the first run, outside the project: -4.1 % in December to +3.0 % in June.
   * The book's rounding adds 0.4 % (0.05 of 11.4 MJ/m2), hence 4.5 %.
   */
  it.each(cases)('stays near the print with hourly ratios in $name', ({ month, dayNumber }) =>
    expectNear(
      tiltedMJm2(month, dayNumber, 'hourly ratios'),
      month.tilted,
      0.045 * month.tilted,
      'H_T, MJ/m2',
    ),
  );

  // With that difference taken out, 0.08 as above, and 0.02 for a ratio given to 0.1 %.
  it.each(cases)('differs as the hourly ratios say in $name', ({ month, dayNumber }) => {
    const expected = month.tilted * (1 + month.hourlyRatiosAddPct / 100);
    expectNear(tiltedMJm2(month, dayNumber, 'hourly ratios'), expected, 0.08 + 0.02, 'H_T, MJ/m2');
  });
});
