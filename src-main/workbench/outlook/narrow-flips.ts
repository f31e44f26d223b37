import type { SwingPoint } from './swing-figures.ts';
import { afterTry, roundsLeft, triedNext, type FlipSearch } from './swing-search.ts';

/** Does the walks that points need, and moves the bar between two shares; false when the run was cancelled. */
export type Walk = (points: readonly SwingPoint[], from: number, to: number) => Promise<boolean>;

/**
 * Halves all brackets side by side until each is narrow enough; null when the run was cancelled.
 *
 * @param holds whether the first of the plan keeps its place at a point that is walked
 * @param done where the bar stands
 */
export async function narrowedFlips(
  held: readonly FlipSearch[],
  holds: (point: SwingPoint) => boolean,
  walk: Walk,
  done: number,
): Promise<readonly FlipSearch[] | null> {
  let [flips, from] = [held, done];
  for (let left = roundsLeft(flips); left > 0; left -= 1) {
    const to = from + (1 - from) / left;
    const points = flips.map(triedNext).filter((point) => point !== null);
    if (!(await walk(points, from, to))) return null;
    flips = flips.map((flip) => afterRound(flip, holds));
    from = to;
  }
  return flips;
}

function afterRound(flip: FlipSearch, holds: (point: SwingPoint) => boolean): FlipSearch {
  const point = triedNext(flip);
  return point === null ? flip : afterTry(flip, point.value, holds(point));
}
