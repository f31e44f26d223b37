import { radPerDeg } from '../model/angle.ts';
import { noonsOfMonth } from '../model/sun/calendar.ts';
import { sunOfDay } from '../model/sun/position.ts';
import { seenDaylightHours } from '../model/sun/rise-and-set.ts';

const declinationsOfMonth = new Map<number, readonly number[]>();

/**
 * The most sunshine a month can have, hours a day: its mean daylight from the sun's upper edge to its upper edge.
 *
 * @param month 0 is January
 */
export function longestSunshineH(latDeg: number, month: number): number {
  const declinations =
    declinationsOfMonth.get(month) ?? noonsOfMonth(month).map((noonMs) => sunOfDay(noonMs).declinationRad);
  declinationsOfMonth.set(month, declinations);
  const hours = declinations.reduce(
    (sum, declination) => sum + seenDaylightHours(latDeg * radPerDeg, declination),
    0,
  );
  return hours / declinations.length;
}
