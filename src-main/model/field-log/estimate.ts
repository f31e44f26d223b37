import type { Estimate } from './likelihood-interval.ts';
import { isClosed, meanOfCells, type Cell } from './mean-of-cells.ts';

function logarithm({ low, high }: Cell): Cell {
  return { low: Math.log(low), high: Math.log(high) };
}

/**
 * A quantity above 0 from readings in cells. It scatters by shares rather than by watt-hours, so the mean is that of the
 * logarithms: the value that half of all readings stay below.
 *
 * @returns null with too few readings
 */
export function estimateOf(cells: readonly Cell[], level: number): Estimate | null {
  const found = meanOfCells(cells.map(logarithm), level);
  if (found === null) return null;
  return { value: Math.exp(found.value), low: Math.exp(found.low), high: Math.exp(found.high) };
}

/** Readings that bound a quantity above 0 on both sides. */
export function tellingReadings(cells: readonly Cell[]): number {
  return cells.filter((cell) => isClosed(logarithm(cell))).length;
}
