import type { TidyCell, TidyTable } from '../../../../src-main/sheet/csv/tidy-table.ts';

/** The rows of a table by the names of its columns. */
export function recordsOf({ columns, rows }: TidyTable): readonly Readonly<Record<string, TidyCell>>[] {
  return rows.map((row) => Object.fromEntries(columns.map((column, at) => [column, row[at]!])));
}
