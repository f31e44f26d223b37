/** The ids a check reaches: one row, or with the shift key every row from the one checked before to this one. */
export function reachOfCheck(
  ids: readonly string[],
  at: number,
  before: string | null,
  withShift: boolean,
): readonly string[] {
  const start = withShift && before !== null ? ids.indexOf(before) : -1;
  if (start === -1) return ids.slice(at, at + 1);
  return ids.slice(Math.min(start, at), Math.max(start, at) + 1);
}
