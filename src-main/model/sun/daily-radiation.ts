import { radPerDeg } from '../angle.ts';
import { midMonthDay } from './calendar.ts';
import { daylightHours } from './extraterrestrial.ts';

/** Angstrom-Prescott coefficients that FAO-56 (eq. 35) gives where none were calibrated. */
export const angstromOvercast = 0.25;
export const angstromPerSunshine = 0.5;

/**
 * Clearness from relative sunshine (Angstrom-Prescott, FAO-56 eq. 35): global over extraterrestrial radiation.
 *
 * @param sunshineH bright sunshine, hours a day; above day length it counts as day length
 * @param dayLengthH daylight, hours; 0 in polar night, where the overcast value is returned
 * @returns 0.25..0.75 with the FAO-56 defaults
 */
export function clearnessFromSunshine(sunshineH: number, dayLengthH: number): number {
  const relative = dayLengthH > 0 ? Math.min(1, Math.max(0, sunshineH / dayLengthH)) : 0;
  return angstromOvercast + angstromPerSunshine * relative;
}

/** Mean clearness of each month (index 0 is January) from a station's mean daily sunshine. */
export function monthlyClearness(sunshineH: readonly number[], latDeg: number): readonly number[] {
  return sunshineH.map((hours, month) =>
    clearnessFromSunshine(hours, daylightHours(latDeg * radPerDeg, midMonthDay(month))),
  );
}

/** Validity of the monthly correlation of Erbs et al. 1982; clearness outside is held at the edge. */
const erbsLowest = 0.3;
const erbsHighest = 0.8;
/** Sunset hour angle that parts its winter from its other seasons, rad. */
const erbsSeasonRad = 81.4 * radPerDeg;

/**
 * Monthly mean diffuse share of global radiation (Erbs, Klein & Duffie 1982, Solar Energy 28(4):293-302).
 *
 * @param clearness monthly mean, global over extraterrestrial
 * @param sunsetRad sunset hour angle
 * @returns 0..1
 */
export function monthlyDiffuseShare(clearness: number, sunsetRad: number): number {
  const k = Math.min(erbsHighest, Math.max(erbsLowest, clearness));
  return sunsetRad <= erbsSeasonRad
    ? 1.391 - 3.56 * k + 4.189 * k ** 2 - 2.137 * k ** 3
    : 1.311 - 3.022 * k + 3.427 * k ** 2 - 1.821 * k ** 3;
}
