import { cut, displayWidth, oneLine, pad } from './plain-text.ts';

export interface TextColumn {
  readonly head: string;
  readonly align: 'left' | 'right';
  /** Longer cells are cut; without it the column grows with its cells. */
  readonly widest?: number;
}

const gap = '  ';
const rule = '-';

function widthOf({ widest = Infinity }: TextColumn, cells: readonly string[]): number {
  return Math.min(widest, Math.max(...cells.map(displayWidth)));
}

/** A table of aligned columns under a ruled head, a line per row. */
export function textTable(
  columns: readonly TextColumn[],
  rows: readonly (readonly string[])[],
): readonly string[] {
  const clean = rows.map((row) => row.map(oneLine));
  const heads = columns.map(({ head }) => oneLine(head));
  const widths = columns.map((column, index) =>
    widthOf(
      column,
      [heads, ...clean].map((row) => row[index] ?? ''),
    ),
  );
  const line = (cells: readonly string[]) =>
    columns
      .map(({ align }, index) => pad(cut(cells[index] ?? '', widths[index]!), widths[index]!, align))
      .join(gap)
      .trimEnd();
  const rules = widths.map((width) => rule.repeat(width));
  return [heads, rules, ...clean].map(line);
}
