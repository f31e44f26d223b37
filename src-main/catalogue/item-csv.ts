import type { CsvProblem } from '../../shared-types/contract.ts';
import { itemDraft, itemKinds, type ItemDraft, type ItemKind } from '../../shared-types/item.ts';
import type { CellStyle } from './csv/cells.ts';
import { columnsOfKind } from './csv/columns.ts';
import { draftOfRow } from './csv/row-draft.ts';
import { problemsOfIssues, problemsOfPlace } from './csv/row-problems.ts';
import { readTable, type CsvRow } from './csv/table.ts';

/** A good line, numbered as a spreadsheet numbers it. */
export interface ReadLine {
  readonly line: number;
  readonly item: ItemDraft;
}

export interface ItemCsvReading {
  readonly lines: ReadLine[];
  readonly problems: CsvProblem[];
}

/**
 * Reads an inventory: a header that names columns (csv/columns.ts), then a line for each item. Prices are in major units
 * of `currency`. Every line in error is told; the others are read.
 */
export function readItemCsv(text: string, currency: string): ItemCsvReading {
  const table = readTable(text.replace(/^\uFEFF/, ''));
  if (table.problems.length > 0) return { lines: [], problems: [...table.problems] };
  const style: CellStyle = { decimalComma: table.decimalComma, currency };
  const readings = table.rows.map((row) => readRow(row, style));
  return {
    lines: readings.flatMap((reading) => reading.lines),
    problems: [...table.lineProblems, ...readings.flatMap((reading) => reading.problems)].toSorted(
      (one, other) => one.line - other.line,
    ),
  };
}

function readRow({ line, cells }: CsvRow, style: CellStyle): ItemCsvReading {
  const kind = cells.get('kind')?.toLowerCase();
  // A row of no known kind is read as the plainest one, and the schema refuses its kind.
  const columns = columnsOfKind[isKind(kind) ? kind : 'accessory'];
  const parsed = itemDraft.safeParse(draftOfRow(cells, columns, style));
  const misplaced = isKind(kind) ? problemsOfPlace(kind, columns, cells, line) : [];
  if (parsed.success && misplaced.length === 0) return { lines: [{ line, item: parsed.data }], problems: [] };
  const issues = parsed.error?.issues ?? [];
  const refused = problemsOfIssues(issues, columns, cells, line, style.currency);
  return { lines: [], problems: [...refused, ...misplaced] };
}

function isKind(name: string | undefined): name is ItemKind {
  return name !== undefined && Object.hasOwn(itemKinds, name);
}
