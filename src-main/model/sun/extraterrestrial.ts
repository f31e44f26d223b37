import { clipUnit } from '../angle.ts';

/** Solar constant of FAO-56, MJ/m2 per minute (1366.7 W/m2). */
const solarConstantMJm2Min = 0.082;
const minutesPerHour = 60;
/** Wh in one MJ. */
export const whPerMJ = 1e6 / 3600;

/** What a day needs to know of the sun. */
export interface SunDistance {
  readonly declinationRad: number;
  /** Inverse distance Earth-Sun squared, mean distance 1. */
  readonly distanceFactor: number;
}

const yearAngle = (dayNumber: number): number => (2 * Math.PI * dayNumber) / 365;

/**
 * The sun of FAO-56 by day number (eqs. 23 and 24); declination within 1.5 degrees of the ephemeris. For monthly means,
 * whose coefficients were found with it; days are reckoned with the ephemeris.
 */
export function faoSun(dayNumber: number): SunDistance {
  return {
    declinationRad: 0.409 * Math.sin(yearAngle(dayNumber) - 1.39),
    distanceFactor: 1 + 0.033 * Math.cos(yearAngle(dayNumber)),
  };
}

/** Sunset hour angle (FAO-56 eq. 25), rad 0..pi: 0 in polar night, pi in polar day. */
export function sunsetHourAngleRad(latRad: number, declinationRad: number): number {
  return Math.acos(clipUnit(-Math.tan(latRad) * Math.tan(declinationRad)));
}

/** Daylight hours N (FAO-56 eq. 34), sun's centre on the horizon, no refraction; 0..24. */
export function daylightHours(latRad: number, declinationRad: number): number {
  return (24 / Math.PI) * sunsetHourAngleRad(latRad, declinationRad);
}

/** Cosine of the sun's zenith angle over the daylight of a day, hours: the geometry of FAO-56 eq. 21. */
export function cosZenithHours(latRad: number, declinationRad: number): number {
  const sunset = sunsetHourAngleRad(latRad, declinationRad);
  const geometry =
    sunset * Math.sin(latRad) * Math.sin(declinationRad) +
    Math.cos(latRad) * Math.cos(declinationRad) * Math.sin(sunset);
  return Math.max(0, (24 / Math.PI) * geometry);
}

/**
 * Extraterrestrial radiation on a horizontal plane, a whole day (FAO-56 eq. 21), MJ/m2.
 *
 * @param latRad latitude, -pi/2..pi/2
 * @returns 0 in polar night
 */
export function extraterrestrialMJm2(latRad: number, sun: SunDistance): number {
  return (
    solarConstantMJm2Min * minutesPerHour * sun.distanceFactor * cosZenithHours(latRad, sun.declinationRad)
  );
}

/** Irradiance on a plane facing the sun outside the atmosphere, W/m2. */
export function extraterrestrialNormalWm2(distanceFactor: number): number {
  return ((solarConstantMJm2Min * 1e6) / 60) * distanceFactor;
}
