import { radPerDeg } from '../angle.ts';
import { dayOfYear, midMonthDay, noonsOfMonth } from './calendar.ts';
import { daylightHours, extraterrestrialMJm2, faoSun, whPerMJ } from './extraterrestrial.ts';

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
export function clearnessOfSunshine(sunshineH: readonly number[], latDeg: number): readonly number[] {
  return sunshineH.map((hours, month) => {
    const { declinationRad } = faoSun(midMonthDay(month));
    return clearnessFromSunshine(hours, daylightHours(latDeg * radPerDeg, declinationRad));
  });
}

/** Mean daily extraterrestrial radiation of a month (0 is January) on a horizontal plane, kWh/m2. */
export function extraterrestrialOfMonthKWhM2(latDeg: number, month: number): number {
  const days = noonsOfMonth(month);
  const sumMJ = days.reduce(
    (sum, noonMs) => sum + extraterrestrialMJm2(latDeg * radPerDeg, faoSun(dayOfYear(noonMs))),
    0,
  );
  return ((sumMJ / days.length) * whPerMJ) / 1000;
}

/** A month with less light than this outside the atmosphere is polar night: its clearness means nothing, kWh/m2 a day. */
const polarNightKWhM2 = 0.01;

/**
 * Mean clearness of each month from the rider's own radiation.
 *
 * @param kWhM2ADay mean daily global radiation on a horizontal plane, January first
 * @returns at most 1; the overcast value in polar night
 */
export function clearnessOfRadiation(kWhM2ADay: readonly number[], latDeg: number): readonly number[] {
  return kWhM2ADay.map((kWhM2, month) => {
    const most = extraterrestrialOfMonthKWhM2(latDeg, month);
    return most < polarNightKWhM2 ? angstromOvercast : Math.min(1, kWhM2 / most);
  });
}
