import Papa from 'papaparse';
import { StationsError } from './stations-error.ts';

const stationColumns = [
  'place',
  'country',
  'lat_deg',
  'lon_deg',
  'elev_m',
  'month',
  'sunshine_h_per_day',
  'tmin_c',
  'tmax_c',
  'source',
] as const;
type StationColumn = (typeof stationColumns)[number];

/** One month of one place. */
export type StationRow = Readonly<Record<StationColumn, string>>;

/** The rows of a station table, each with every column and a place. */
export function stationRows(text: string): StationRow[] {
  const { data, errors, meta } = Papa.parse<StationRow>(text, {
    header: true,
    skipEmptyLines: true,
    delimiter: ',',
  });
  if (data.length === 0) throw new StationsError('empty', 'The station table has no station.');
  const missing = stationColumns.filter((column) => meta.fields?.includes(column) !== true);
  if (missing.length > 0)
    throw new StationsError('columns', `The station table misses: ${missing.join(', ')}.`);
  const [broken] = errors;
  if (broken !== undefined) throw new StationsError('columns', brokenRow(broken));
  if (data.some((row) => row.place.trim() === ''))
    throw new StationsError('place', 'The station table has a row without a place.');
  return data;
}

/** The parser counts the rows below the header from 0. */
function brokenRow({ row = 0, message }: Papa.ParseError): string {
  return `The station table, row ${row + 1} below the header: ${message}.`;
}

export function numberOrNull(row: StationRow, column: StationColumn): number | null {
  return row[column].trim() === '' ? null : numberOf(row, column);
}

export function numberOf(row: StationRow, column: StationColumn): number {
  const text = row[column];
  const value = Number(text);
  if (text.trim() !== '' && Number.isFinite(value)) return value;
  throw new StationsError(
    'number',
    `${row.place}, month ${row.month}: ${column} is "${text}", not a number.`,
  );
}
