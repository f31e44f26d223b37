import papaparse from 'papaparse';
import { formulaStart } from '../../../shared-types/formula-start.ts';

export type TidyCell = string | number | null;

/** A table with a line for each thing and a column for each property. Programs read the names: add at the end, never rename. */
export interface TidyTable {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly TidyCell[])[];
}

/** Columns by their names, each with its cell of a row. */
export type TidyColumns<Row> = Readonly<Record<string, (row: Row) => TidyCell>>;

export function tidyTable<Row>(columns: TidyColumns<Row>, rows: readonly Row[]): TidyTable {
  return {
    columns: Object.keys(columns),
    rows: rows.map((row) => Object.values(columns).map((cellOf) => cellOf(row))),
  };
}

/**
 * RFC 4180 says nothing of encodings. Without this mark common spreadsheets take a file for the computer's old code page
 * and garble every ø and ł; whoever reads UTF-8 knows to skip it.
 */
const byteOrderMark = '\ufeff';

/** By RFC 4180, the byte order mark first; numbers with a point and no thousands separator. A text that a spreadsheet would run is defused. */
export function tidyCsv({ columns, rows }: TidyTable): string {
  const table = papaparse.unparse([[...columns], ...rows.map((row) => [...row])], {
    newline: '\r\n',
    escapeFormulae: formulaStart,
  });
  return `${byteOrderMark}${table}\r\n`;
}

export const whDecimals = 3;
export const shareDecimals = 4;
export const minuteDecimals = 2;
export const gramDecimals = 1;

/** What is no number is an empty cell. */
export function rounded(value: number, decimals: number): TidyCell {
  if (!Number.isFinite(value)) return null;
  const factor = 10 ** decimals;
  return Math.round(value * factor) / factor;
}

export function yesNo(flag: boolean): TidyCell {
  return flag ? 'yes' : 'no';
}
