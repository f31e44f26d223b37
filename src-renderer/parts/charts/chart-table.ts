import Papa from 'papaparse';
import { formulaStart } from '../../../shared-types/formula-start.ts';

/** The figures behind a chart. */
export interface ChartTable {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly (string | number)[])[];
}

/** How many digits after the point the numbers of a column are shown with: none where all are whole. */
export function digitsOf({ rows }: ChartTable, column: number): 0 | 1 {
  return rows.every((row) => typeof row[column] !== 'number' || Number.isInteger(row[column])) ? 0 : 1;
}

const csvDigits = 3;

/** RFC 4180, numbers with a point; what is no number is left empty, and text like a formula is defused. */
export function toCsv({ columns, rows }: ChartTable): string {
  const figures = rows.map((row) => row.map((value) => (typeof value === 'number' ? rounded(value) : value)));
  const text = Papa.unparse([[...columns], ...figures], { newline: '\r\n', escapeFormulae: formulaStart });
  return `${text}\r\n`;
}

function rounded(value: number): number | '' {
  return Number.isFinite(value) ? Number(value.toFixed(csvDigits)) : '';
}
