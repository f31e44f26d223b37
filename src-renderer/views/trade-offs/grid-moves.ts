/** A place in a grid of rows and columns, counted from 0. */
export interface GridPlace {
  readonly row: number;
  readonly column: number;
}

export interface GridSize {
  readonly rows: number;
  readonly columns: number;
}

/** Where a key leads in a grid, never over its edge; null for a key that leads nowhere. */
export function placeAfterKey(key: string, { row, column }: GridPlace, size: GridSize): GridPlace | null {
  const within = (value: number, count: number): number => Math.min(count - 1, Math.max(0, value));
  switch (key) {
    case 'ArrowUp':
      return { row: within(row - 1, size.rows), column };
    case 'ArrowDown':
      return { row: within(row + 1, size.rows), column };
    case 'ArrowLeft':
      return { row, column: within(column - 1, size.columns) };
    case 'ArrowRight':
      return { row, column: within(column + 1, size.columns) };
    case 'Home':
      return { row, column: 0 };
    case 'End':
      return { row, column: size.columns - 1 };
    default:
      return null;
  }
}
