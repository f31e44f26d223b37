/** A row as its form takes it: all but the id, for each kind of a union by itself. */
export type DraftOf<Row> = Row extends unknown ? Omit<Row, 'id'> : never;

export function draftOf<Row extends { readonly id: string }>(row: Row): DraftOf<Row> {
  const copy: { id?: string } = { ...row };
  delete copy.id;
  return copy as DraftOf<Row>;
}
