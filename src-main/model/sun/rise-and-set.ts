import { AstroTime, Body, Observer, SearchAltitude } from 'astronomy-engine';
import type { SunUp } from '../../../shared-types/leg-sun.ts';
import { clipUnit, radPerDeg } from '../angle.ts';
import { msPerDay } from './calendar.ts';
import { cosZenithOf, sunOfDay } from './position.ts';

/** Centre of the sun below the horizon as its upper edge appears: 16' of radius and 34' of refraction, degrees. */
const riseAltitudeDeg = -0.8333;
const msPerHour = 3_600_000;

/**
 * Sunrise and sunset of a day on the rider's clock.
 *
 * @param noonMs noon of the date, UTC
 * @param latDeg -90..90
 * @param lonDeg east positive; it only sets which instant the local day begins at
 * @returns hours after the midnight that begins the day; sunset can pass 24 where nights are short
 * Checked against the report examples of the NREL solar position algorithm in test/published.
 */
export function riseAndSet(noonMs: number, latDeg: number, lonDeg: number): SunUp {
  const midnightMs = noonMs - msPerDay / 2 - (lonDeg / 15) * msPerHour;
  const observer = new Observer(latDeg, lonDeg, 0);
  const crossing = (direction: 1 | -1, fromMs: number): number | null => {
    const found = SearchAltitude(
      Body.Sun,
      observer,
      direction,
      new AstroTime(new Date(fromMs)),
      1,
      riseAltitudeDeg,
    );
    return found === null ? null : found.date.getTime();
  };
  const riseMs = crossing(1, midnightMs);
  if (riseMs === null) return { as: standsHigh(noonMs, latDeg) ? 'up' : 'down' };
  const setMs = crossing(-1, riseMs);
  if (setMs === null) return { as: 'up' };
  return {
    as: 'rises',
    riseH: (riseMs - midnightMs) / msPerHour,
    setH: (setMs - midnightMs) / msPerHour,
  };
}

/** Daylight as seen, from the sun's upper edge to its upper edge with refraction, hours 0..24. */
export function seenDaylightHours(latRad: number, declinationRad: number): number {
  const sine = Math.sin(riseAltitudeDeg * radPerDeg) - Math.sin(latRad) * Math.sin(declinationRad);
  return (24 / Math.PI) * Math.acos(clipUnit(sine / (Math.cos(latRad) * Math.cos(declinationRad))));
}

function standsHigh(noonMs: number, latDeg: number): boolean {
  const { declinationRad } = sunOfDay(noonMs);
  return cosZenithOf(0, declinationRad, latDeg * radPerDeg) > Math.sin(riseAltitudeDeg * radPerDeg);
}
