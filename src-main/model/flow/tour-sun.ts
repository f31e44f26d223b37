import { airDegC } from '../sun/air-temperature.ts';
import { monthOf } from '../sun/calendar.ts';
import type { ExpectedDay } from '../sun/history/sky-law.ts';
import { sunCourse, type SunCourse } from '../sun/sun-course.ts';

/** The monthly means of a place; index 0 is January. */
export interface PlaceClimate {
  readonly latDeg: number;
  readonly elevationM: number;
  readonly clearness: readonly number[];
  /** Mean daily minimum and maximum of the air. */
  readonly minDegC: readonly number[];
  readonly maxDegC: readonly number[];
}

/** The sun and the air of a row of days: all that is known before the weather is drawn. */
export interface TourSun {
  readonly stepsPerDay: number;
  /** By day. */
  readonly courses: readonly SunCourse[];
  readonly expected: readonly ExpectedDay[];
  /** By step of the whole row. */
  readonly airDegC: Float64Array;
}

/**
 * @param days of the tour in order: the place and noon of each date, UTC
 * @param stepsPerDay equal steps from midnight to midnight of local mean solar time
 */
export function tourSun(
  days: readonly { readonly climate: PlaceClimate; readonly noonMs: number }[],
  stepsPerDay: number,
): TourSun {
  const courses = days.map(({ climate, noonMs }) =>
    sunCourse(climate.latDeg, climate.elevationM, noonMs, stepsPerDay),
  );
  const airOfDay = new Float64Array(days.length * stepsPerDay);
  days.forEach(({ climate, noonMs }, day) => {
    const month = monthOf(noonMs);
    const [low, high] = [climate.minDegC[month]!, climate.maxDegC[month]!];
    for (let step = 0; step < stepsPerDay; step += 1)
      airOfDay[day * stepsPerDay + step] = airDegC(((step + 0.5) / stepsPerDay) * 24, low, high);
  });
  return {
    stepsPerDay,
    courses,
    expected: days.map(({ climate, noonMs }, day) => ({
      mean: climate.clearness[monthOf(noonMs)]!,
      most: courses[day]!.clearestClearness,
    })),
    airDegC: airOfDay,
  };
}

/** Mean global radiation of a day on a horizontal plane, Wh/m2: what its drawn days average to. */
export function meanRadiationWhM2({ courses, expected }: TourSun, day: number): number {
  const { mean, most } = expected[day]!;
  return Math.min(mean, most) * courses[day]!.extraterrestrialWhM2;
}
