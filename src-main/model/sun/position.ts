import { AstroTime, Body, Equator, Observer, SiderealTime } from 'astronomy-engine';
import { clipUnit, radPerDeg, wrapDeg } from '../angle.ts';
import { msPerDay } from './calendar.ts';

/** Where the sun stands, geometric (no refraction). */
export interface SunPosition {
  /** Angle from straight up, degrees; above 90 the sun is down. */
  readonly zenithDeg: number;
  /** Clockwise from north, degrees 0..360. */
  readonly azimuthDeg: number;
}

/** The sun's slow angles on one day: good for all hours of it within 0.2 degrees of declination. */
export interface SunDay {
  readonly declinationRad: number;
  /** Apparent less mean solar time, minutes. */
  readonly equationOfTimeMin: number;
}

const msPerHour = 3_600_000;

const sunAt = (timeMs: number, latDeg: number, lonDeg: number) => {
  const time = new AstroTime(new Date(timeMs));
  const observer = new Observer(latDeg, lonDeg, 0);
  const { ra, dec } = Equator(Body.Sun, time, observer, true, true);
  return { hourAngleDeg: (SiderealTime(time) - ra) * 15 + lonDeg, declinationRad: dec * radPerDeg };
};

/**
 * Position of the sun from the ephemeris of astronomy-engine.
 *
 * @param timeMs instant, ms since 1970 UTC
 * @param latDeg latitude, -90..90, north positive
 * @param lonDeg longitude, -180..180, east positive
 * Checked against NREL/TP-560-34302 in test/published.
 */
export function sunPosition(timeMs: number, latDeg: number, lonDeg: number): SunPosition {
  const { hourAngleDeg, declinationRad } = sunAt(timeMs, latDeg, lonDeg);
  return positionFromHourAngle(hourAngleDeg * radPerDeg, declinationRad, latDeg * radPerDeg);
}

/**
 * Spherical triangle of pole, zenith and sun.
 *
 * @param hourAngleRad 0 at solar noon, morning negative
 * @returns zenith and azimuth; at the poles and the exact zenith, where azimuth has no meaning, south
 */
export function positionFromHourAngle(
  hourAngleRad: number,
  declinationRad: number,
  latRad: number,
): SunPosition {
  const cosZenith = cosZenithOf(hourAngleRad, declinationRad, latRad);
  const east = -Math.cos(declinationRad) * Math.sin(hourAngleRad);
  const north =
    Math.sin(declinationRad) * Math.cos(latRad) -
    Math.cos(declinationRad) * Math.sin(latRad) * Math.cos(hourAngleRad);
  const azimuthDeg = Math.hypot(east, north) < 1e-12 ? 180 : wrapDeg(Math.atan2(east, north) / radPerDeg);
  return { zenithDeg: Math.acos(cosZenith) / radPerDeg, azimuthDeg };
}

/** Cosine of the zenith angle; negative when the sun is down. */
export function cosZenithOf(hourAngleRad: number, declinationRad: number, latRad: number): number {
  return clipUnit(
    Math.sin(latRad) * Math.sin(declinationRad) +
      Math.cos(latRad) * Math.cos(declinationRad) * Math.cos(hourAngleRad),
  );
}

/**
 * Declination and equation of time of a day, taken at the instant given (best: local noon).
 * The equation of time is the sun's hour angle at Greenwich less that of the mean sun.
 */
export function sunOfDay(noonMs: number): SunDay {
  const { hourAngleDeg, declinationRad } = sunAt(noonMs, 0, 0);
  const utHours = (noonMs % msPerDay) / msPerHour;
  const aheadDeg = wrapDeg(hourAngleDeg - (utHours - 12) * 15 + 180) - 180;
  return { declinationRad, equationOfTimeMin: aheadDeg * 4 };
}

/**
 * Hour angle on the rider's clock. The clock of a tour is local mean solar time, so that noon is near the highest sun
 * everywhere and no table of time zones is needed.
 */
export function hourAngleRadOf(clockHour: number, day: SunDay): number {
  return ((clockHour - 12) * 15 + day.equationOfTimeMin / 4) * radPerDeg;
}
