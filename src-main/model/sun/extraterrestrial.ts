import { clipUnit } from '../angle.ts';

/** Solar constant of FAO-56, MJ/m2 per minute (1366.7 W/m2). */
const solarConstantMJm2Min = 0.082;
const minutesPerDay = 1440;
/** Wh in one MJ. */
export const whPerMJ = 1e6 / 3600;

const yearAngle = (dayNumber: number): number => (2 * Math.PI * dayNumber) / 365;

/** Inverse relative distance Earth-Sun squared (FAO-56 eq. 23). */
export function inverseDistanceFactor(dayNumber: number): number {
  return 1 + 0.033 * Math.cos(yearAngle(dayNumber));
}

/** Declination by day number (FAO-56 eq. 24), rad; within 1.5 degrees of the ephemeris. */
export function declinationByDayRad(dayNumber: number): number {
  return 0.409 * Math.sin(yearAngle(dayNumber) - 1.39);
}

/** Sunset hour angle (FAO-56 eq. 25), rad 0..pi: 0 in polar night, pi in polar day. */
export function sunsetHourAngleRad(latRad: number, declinationRad: number): number {
  return Math.acos(clipUnit(-Math.tan(latRad) * Math.tan(declinationRad)));
}

/** Daylight hours N (FAO-56 eq. 34), sun's centre on the horizon, no refraction; 0..24. */
export function daylightHours(latRad: number, dayNumber: number): number {
  return (24 / Math.PI) * sunsetHourAngleRad(latRad, declinationByDayRad(dayNumber));
}

/**
 * Extraterrestrial radiation on a horizontal plane, a whole day (FAO-56 eq. 21), MJ/m2.
 *
 * @param latRad latitude, -pi/2..pi/2
 * @param dayNumber 1..366
 * @returns 0 in polar night
 */
export function extraterrestrialMJm2(latRad: number, dayNumber: number): number {
  const declination = declinationByDayRad(dayNumber);
  const sunset = sunsetHourAngleRad(latRad, declination);
  const geometry =
    sunset * Math.sin(latRad) * Math.sin(declination) +
    Math.cos(latRad) * Math.cos(declination) * Math.sin(sunset);
  return Math.max(
    0,
    (minutesPerDay / Math.PI) * solarConstantMJm2Min * inverseDistanceFactor(dayNumber) * geometry,
  );
}

/** Irradiance on a plane facing the sun outside the atmosphere, W/m2. */
export function extraterrestrialNormalWm2(dayNumber: number): number {
  return ((solarConstantMJm2Min * 1e6) / 60) * inverseDistanceFactor(dayNumber);
}
