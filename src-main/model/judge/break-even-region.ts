import type { MapCell } from '../../../shared-types/break-even.ts';

/** How a map falls apart: one scenario leads on short tours and beside walls, another beyond. */
export interface MapRegions {
  /** Leads on the shortest tour with the most walls. */
  readonly homeId: string;
  /** Up to so many days it leads whatever the walls; 0 when at no length. */
  readonly anyGapUpToDays: number;
  /** With a wall at least every so many days it leads at any length; 0 when with no wall. */
  readonly anyLengthUpToGap: number;
  /** Leads most of the tours beyond both. */
  readonly beyondId: string;
  /** It leads all of them that are carried. */
  readonly beyondIsOne: boolean;
  /** One scenario or another carries the plan on every tour beyond both. */
  readonly beyondIsCarried: boolean;
}

/** Whether a scenario carries the plan on a tour of the map, so that a leader can be spoken of. */
export function isCarried({ carrying }: Pick<MapCell, 'carrying'>): boolean {
  return carrying !== 'none';
}

/** @returns null when the map does not fall into two such regions */
export function regionsOf(cells: readonly MapCell[]): MapRegions | null {
  const [first] = cells;
  if (first === undefined || first.leaderId === null || !isCarried(first)) return null;
  const homeId = first.leaderId;
  const isHome = (cell: MapCell): boolean => isCarried(cell) && cell.leaderId === homeId;
  const anyGapUpToDays = reach(cells, isHome, ({ days }) => days);
  const anyLengthUpToGap = reach(cells, isHome, ({ gapDays }) => gapDays);
  const beyond = cells.filter(({ days, gapDays }) => days > anyGapUpToDays && gapDays > anyLengthUpToGap);
  const leaders = countLed(beyond.filter(isCarried));
  const [most] = leaders;
  const hasBorder = anyGapUpToDays > 0 || anyLengthUpToGap > 0;
  if (!hasBorder || most === undefined || most.id === homeId) return null;
  return {
    ...{ homeId, anyGapUpToDays, anyLengthUpToGap },
    beyondId: most.id,
    beyondIsOne: leaders.length === 1,
    beyondIsCarried: beyond.every(isCarried),
  };
}

/** The last value up to which all cells pass, in ascending order; 0 when not even those of the first do. */
function reach(
  cells: readonly MapCell[],
  passes: (cell: MapCell) => boolean,
  valueOf: (cell: MapCell) => number,
): number {
  const stop = Math.min(...cells.filter((cell) => !passes(cell)).map(valueOf));
  return Math.max(0, ...cells.map(valueOf).filter((value) => value < stop));
}

/** How many of some cells each leads, most first. */
export function countLed(
  cells: readonly MapCell[],
): readonly { readonly id: string; readonly cells: number }[] {
  const ids = [...new Set(cells.flatMap(({ leaderId }) => leaderId ?? []))];
  return ids
    .map((id) => ({ id, cells: cells.filter(({ leaderId }) => leaderId === id).length }))
    .sort((a, b) => b.cells - a.cells);
}
