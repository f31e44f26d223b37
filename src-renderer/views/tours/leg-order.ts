/** The list with one entry moved by one place; at either end it stays as it is. */
export function moved<T>(list: readonly T[], place: number, by: -1 | 1): readonly T[] {
  const target = place + by;
  const entry = list[place];
  if (entry === undefined || target < 0 || target >= list.length) return list;
  return list.toSpliced(place, 1).toSpliced(target, 0, entry);
}
