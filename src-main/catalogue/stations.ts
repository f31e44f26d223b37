import stationsCsv from '../../db/climate/stations.csv?raw';
import type { Station } from '../../shared-types/climate.ts';
import { numberOf, numberOrNull, stationRows, type StationRow } from './station-rows.ts';
import { StationsError } from './stations-error.ts';

const monthsAYear = 12;
const hoursADay = 24;
const mostLatDeg = 90;
const mostLonDeg = 180;

/**
 * The most sunshine there can be in a month (0 is January) at a latitude: hours a day from the sun's upper edge with
 * refraction. Handed in, because this layer may not reckon with the sun.
 */
export type LongestSunshineH = (latDeg: number, month: number) => number;

let parsed: readonly Station[] | null = null;

/** All climate stations, in the order of the table. */
export function readStations(longestSunshineH: LongestSunshineH): readonly Station[] {
  parsed ??= parseStations(stationsCsv, longestSunshineH);
  return parsed;
}

/** Reads a station table: twelve rows for each place, one a month. A place is found by its name, which is unique. */
export function parseStations(text: string, longestSunshineH: LongestSunshineH): Station[] {
  const rows = stationRows(text);
  const places = [...new Set(rows.map((row) => row.place))];
  return places.map((place) =>
    stationOf(
      place,
      rows.filter((row) => row.place === place),
      longestSunshineH,
    ),
  );
}

function stationOf(place: string, rows: readonly StationRow[], longestSunshineH: LongestSunshineH): Station {
  const months = inOrder(place, rows);
  // There are twelve, or inOrder() would have refused.
  const first = months[0]!;
  const latDeg = degreesOf(first, 'lat_deg', mostLatDeg);
  const minDegC = months.map((row) => numberOrNull(row, 'tmin_c'));
  const maxDegC = months.map((row) => numberOrNull(row, 'tmax_c'));
  refuseTurned(place, minDegC, maxDegC);
  return {
    place,
    country: first.country,
    latDeg,
    lonDeg: degreesOf(first, 'lon_deg', mostLonDeg),
    elevationM: numberOf(first, 'elev_m'),
    sunshineH: months.map((row, month) => sunshineOf(row, longestSunshineH(latDeg, month))),
    minDegC,
    maxDegC,
    source: first.source,
  };
}

function inOrder(place: string, rows: readonly StationRow[]): StationRow[] {
  const months = rows.toSorted((a, b) => Number(a.month) - Number(b.month));
  if (months.length !== monthsAYear || months.some((row, index) => Number(row.month) !== index + 1)) {
    const found = months.map((row) => row.month).join(', ');
    throw new StationsError('months', `${place} must have each month from 1 to 12 once; it has ${found}.`);
  }
  return months;
}

function degreesOf(row: StationRow, column: 'lat_deg' | 'lon_deg', most: number): number {
  const degrees = numberOf(row, column);
  if (Math.abs(degrees) <= most) return degrees;
  throw new StationsError(
    'position',
    `${row.place}: ${column} is ${degrees}; allowed is -${most} to ${most}.`,
  );
}

function sunshineOf(row: StationRow, longestH: number): number {
  const hours = numberOf(row, 'sunshine_h_per_day');
  const allowedH = Math.min(hoursADay, longestH);
  if (hours >= 0 && hours <= allowedH) return hours;
  throw new StationsError(
    'sunshine',
    `${row.place}, month ${row.month}: ${hours} h of sunshine a day; allowed is 0 to ${Number(allowedH.toFixed(2))}.`,
  );
}

function refuseTurned(
  place: string,
  minDegC: readonly (number | null)[],
  maxDegC: readonly (number | null)[],
): void {
  minDegC.forEach((low, index) => {
    const high = maxDegC[index] ?? null;
    if (low === null && high === null) return;
    if (low !== null && high !== null && low <= high) return;
    throw new StationsError(
      'temperatures',
      `${place}, month ${index + 1}: the minimum ${low ?? 'missing'} °C is not at or below the maximum ${high ?? 'missing'} °C.`,
    );
  });
}
