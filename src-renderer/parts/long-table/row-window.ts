/** Rows up to which all of them are drawn: few enough to draw at once, and then the page's own search finds every one. */
export const wholeUpTo = 100;

/** Rows drawn above and below what is in view, so that a turn of the wheel shows no empty paper. */
const beyond = 12;

/** What is in view of a long table. */
export interface TableView {
  readonly scrollTopPx: number;
  readonly heightPx: number;
  readonly rowHeightPx: number;
}

/** A row that is drawn, or a gap as high as the rows that are not. */
export type Piece<Row> =
  | { readonly as: 'row'; readonly index: number; readonly row: Row }
  | { readonly as: 'gap'; readonly at: 'start' | 'middle' | 'end'; readonly rows: number };

/** The rows in view, and the one at `kept` wherever it is, with gaps in place of all others. */
export function piecesInView<Row>(
  rows: readonly Row[],
  view: TableView,
  kept: number,
): readonly Piece<Row>[] {
  const [first, end] = rows.length <= wholeUpTo ? [0, rows.length] : rangeInView(rows.length, view);
  const before = kept < first ? stretch(rows, kept, kept + 1) : [];
  const after = kept >= end ? stretch(rows, kept, kept + 1) : [];
  return withGaps([...before, ...stretch(rows, first, end), ...after], rows.length);
}

function rangeInView(total: number, { scrollTopPx, heightPx, rowHeightPx }: TableView): [number, number] {
  const first = Math.floor(scrollTopPx / rowHeightPx) - beyond;
  const end = Math.ceil((scrollTopPx + heightPx) / rowHeightPx) + beyond;
  return [Math.max(0, Math.min(first, total - 1)), Math.max(0, Math.min(end, total))];
}

type DrawnRow<Row> = Extract<Piece<Row>, { as: 'row' }>;

function stretch<Row>(rows: readonly Row[], from: number, end: number): DrawnRow<Row>[] {
  return rows.slice(from, end).map((row, place) => ({ as: 'row', index: from + place, row }));
}

function withGaps<Row>(drawn: readonly DrawnRow<Row>[], total: number): readonly Piece<Row>[] {
  const pieces: Piece<Row>[] = [];
  let next = 0;
  for (const row of drawn) {
    if (row.index > next)
      pieces.push({ as: 'gap', at: next === 0 ? 'start' : 'middle', rows: row.index - next });
    pieces.push(row);
    next = row.index + 1;
  }
  if (next < total) pieces.push({ as: 'gap', at: 'end', rows: total - next });
  return pieces;
}

/** The row a key leads to from this one; null when the key leads nowhere. */
export function rowByKey(key: string, from: number, total: number, page: number): number | null {
  const to = targets.get(key)?.(from, total, Math.max(1, page));
  return to === undefined ? null : Math.max(0, Math.min(to, total - 1));
}

const targets: ReadonlyMap<string, (from: number, total: number, page: number) => number> = new Map([
  ['ArrowDown', (from: number) => from + 1],
  ['ArrowUp', (from: number) => from - 1],
  ['PageDown', (from: number, _: number, page: number) => from + page],
  ['PageUp', (from: number, _: number, page: number) => from - page],
  ['Home', () => 0],
  ['End', (_: number, total: number) => total - 1],
]);

/** Where a table must be scrolled to for a row to be in view, px; as it is when the row is in view already. */
export function scrollToShow(index: number, { scrollTopPx, heightPx, rowHeightPx }: TableView): number {
  const top = index * rowHeightPx;
  const lowest = top + rowHeightPx - heightPx;
  return Math.max(lowest, Math.min(scrollTopPx, top));
}
