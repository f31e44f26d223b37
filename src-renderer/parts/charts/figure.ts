import type { ChartTable } from './chart-table.ts';
import type { Draw } from './drawing.ts';
import type { LegendEntry } from './legend.ts';

/** A chart ready to be framed: what it finds, what it shows, and the figures behind it. */
export interface Figure {
  readonly title: string;
  readonly subtitle: string;
  /** File name without its ending. */
  readonly fileName: string;
  readonly legend: readonly LegendEntry[];
  readonly table: () => ChartTable;
  readonly draw: Draw;
}
