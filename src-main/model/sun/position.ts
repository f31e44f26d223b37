import { AstroTime, Body, Equator, Observer, SiderealTime } from 'astronomy-engine';
import { clipUnit, radPerDeg, wrapDeg } from '../angle.ts';
import { msPerDay } from './calendar.ts';
import type { SunDistance } from './extraterrestrial.ts';

/** Where the sun stands, geometric (no refraction). */
export interface SunPosition {
  /** Angle from straight up, degrees; above 90 the sun is down. */
  readonly zenithDeg: number;
  /** Clockwise from north, degrees 0..360. */
  readonly azimuthDeg: number;
}

/** The sun's slow angles on one day: good for all hours of it within 0.2 degrees of declination. */
export interface SunDay extends SunDistance {
  /** Apparent less mean solar time, minutes. */
  readonly equationOfTimeMin: number;
}

const msPerHour = 3_600_000;
const minutesPerHour = 60;
/** The sky turns by this in an hour. */
const degPerHour = 15;
/** Seen from the ground the sun is off by its parallax, at most 0.0024 degrees. */
const atGreenwich = new Observer(0, 0, 0);

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
 * Declination, distance and equation of time of a day, taken at the instant given (best: local noon).
 * The equation of time is the sun's hour angle at Greenwich less that of the mean sun. Ephemeris of astronomy-engine, checked
 * against NREL/TP-560-34302 in test/published.
 *
 * @param noonMs instant, ms since 1970 UTC
 */
export function sunOfDay(noonMs: number): SunDay {
  const time = new AstroTime(new Date(noonMs));
  const { ra, dec, dist } = Equator(Body.Sun, time, atGreenwich, true, true);
  const utHours = (noonMs % msPerDay) / msPerHour;
  const hourAngleDeg = (SiderealTime(time) - ra) * degPerHour;
  const aheadDeg = wrapDeg(hourAngleDeg - (utHours - 12) * degPerHour + 180) - 180;
  return {
    declinationRad: dec * radPerDeg,
    distanceFactor: 1 / dist ** 2,
    equationOfTimeMin: (aheadDeg / degPerHour) * minutesPerHour,
  };
}

/**
 * Hour angle on the rider's clock. The clock of a tour is local mean solar time, so that noon is near the highest sun
 * everywhere and no table of time zones is needed.
 */
export function hourAngleRadOf(clockHour: number, day: SunDay): number {
  return ((clockHour - 12) * 15 + day.equationOfTimeMin / 4) * radPerDeg;
}
