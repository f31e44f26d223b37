/** Above 0 when `a` ranks before `b`, below 0 when behind, 0 when they share a rank. */
export type Lead<Row> = (a: Row, b: Row) => number;

/** 1 is best; rows that none leads share a rank, and the next rank leaves out as many. */
export function rankOf<Row>(row: Row, rows: readonly Row[], lead: Lead<Row>): number {
  return 1 + rows.filter((other) => lead(other, row) > 0).length;
}
