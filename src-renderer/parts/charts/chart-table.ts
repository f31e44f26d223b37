/** The figures behind a chart. */
export interface ChartTable {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly (string | number)[])[];
}

const csvDigits = 3;

/** Comma-separated, numbers with a point; text that a spreadsheet would take for a formula is led by an apostrophe. */
export function toCsv(table: ChartTable): string {
  return [table.columns, ...table.rows].map((row) => `${row.map(csvCell).join(',')}\r\n`).join('');
}

function csvCell(value: string | number): string {
  if (typeof value === 'number')
    return Number.isFinite(value) ? String(Number(value.toFixed(csvDigits))) : '';
  const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
