import { highestRoadM, lowestRoadM } from '../../../shared-types/track.ts';

/** Longer texts are no numbers and no times. */
export const longestValueText = 64;

const decimalPattern = /^[+-]?(\d+(\.\d*)?|\.\d+)([eE][+-]?\d+)?$/;
/** An XML date and time; one without a zone is UTC, as GPX has it. */
const timePattern = /^(\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d+)?)(Z|[+-]\d\d:\d\d)?$/;

const msPerS = 1000;

function decimal(text: string): number {
  const trimmed = text.trim();
  return trimmed.length <= longestValueText && decimalPattern.test(trimmed) ? Number(trimmed) : NaN;
}

/** A latitude or longitude in degrees; null when it is no number or beyond `limitDeg` either way. */
export function readCoordinate(text: string, limitDeg: number): number | null {
  const valueDeg = decimal(text);
  return Math.abs(valueDeg) <= limitDeg ? valueDeg : null;
}

/** A height, m; NaN, as for none, when it is no number or no height a road can have. */
export function readElevationM(text: string): number {
  const heightM = decimal(text);
  return heightM >= lowestRoadM && heightM <= highestRoadM ? heightM : NaN;
}

/** A time in seconds since 1970 UTC; NaN, as for none, when it is no time. */
export function readTimeS(text: string): number {
  const parts = timePattern.exec(text.trim());
  return parts === null ? NaN : Date.parse(`${parts[1]}${parts[2] ?? 'Z'}`) / msPerS;
}
