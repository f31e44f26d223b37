import Papa from 'papaparse';
import stationsCsv from '../../db/climate/stations.csv?raw';
import type { Station } from '../../shared-types/climate.ts';

/** Where the climate figures come from; shown in the app and printed wherever they are used. */
export const climateCredit =
  'Climate: monthly sunshine and air temperatures mostly from Wikipedia city articles and its list of cities by sunshine ' +
  'duration (Wikipedia contributors, CC BY-SA; articles collected in 2016, doi:10.1007/978-3-319-40581-0_36), after ' +
  'national weather services and the WMO; some temperatures from NOAA NCEI normals 1991-2020 (public domain), from ' +
  'single facts of climate pages and from DSSAT averages for Palmira; positions from the NOAA Integrated Surface ' +
  'Database (public domain).';

export type StationFault = 'months' | 'sunshine' | 'temperatures' | 'number';

/** The station table that ships with Chargewright is not what it should be. */
export class StationsError extends Error {
  readonly fault: StationFault;

  constructor(fault: StationFault, message: string) {
    super(message);
    this.name = 'StationsError';
    this.fault = fault;
  }
}

type StationColumn =
  | 'place'
  | 'country'
  | 'lat_deg'
  | 'lon_deg'
  | 'elev_m'
  | 'month'
  | 'sunshine_h_per_day'
  | 'tmin_c'
  | 'tmax_c'
  | 'source';
type StationRow = Readonly<Record<StationColumn, string>>;

const monthsAYear = 12;
const hoursADay = 24;

let parsed: readonly Station[] | null = null;

/** All climate stations, in the order of the table. */
export function readStations(): readonly Station[] {
  parsed ??= parseStations(stationsCsv);
  return parsed;
}

/** Reads a station table: twelve rows for each place, one a month. A place is found by its name, which is unique. */
export function parseStations(text: string): Station[] {
  const { data } = Papa.parse<StationRow>(text, { header: true, skipEmptyLines: true });
  const places = [...new Set(data.map((row) => row.place))];
  return places.map((place) =>
    stationOf(
      place,
      data.filter((row) => row.place === place),
    ),
  );
}

function stationOf(place: string, rows: readonly StationRow[]): Station {
  const months = inOrder(place, rows);
  const [first] = months;
  if (first === undefined) throw new StationsError('months', `${place} has no months.`);
  const minDegC = months.map((row) => numberOrNull(row, 'tmin_c'));
  const maxDegC = months.map((row) => numberOrNull(row, 'tmax_c'));
  refuseTurned(place, minDegC, maxDegC);
  return {
    place,
    country: first.country,
    latDeg: numberOf(first, 'lat_deg'),
    lonDeg: numberOf(first, 'lon_deg'),
    elevationM: numberOf(first, 'elev_m'),
    sunshineH: months.map(sunshineOf),
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

function sunshineOf(row: StationRow): number {
  const hours = numberOf(row, 'sunshine_h_per_day');
  if (hours >= 0 && hours <= hoursADay) return hours;
  throw new StationsError(
    'sunshine',
    `${row.place}, month ${row.month}: ${hours} h of sunshine a day; allowed is 0 to ${hoursADay}.`,
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

function numberOrNull(row: StationRow, column: StationColumn): number | null {
  return row[column] === '' ? null : numberOf(row, column);
}

function numberOf(row: StationRow, column: StationColumn): number {
  const text = row[column];
  const value = Number(text);
  if (text.trim() !== '' && Number.isFinite(value)) return value;
  throw new StationsError(
    'number',
    `${row.place}, month ${row.month}: ${column} is "${text}", not a number.`,
  );
}
