import { marginLadder } from '../../../../shared-types/kit-search.ts';
import { largestUseFactor } from '../../flow/margin.ts';

const pointsAFactor = 100;

/** The factors of use that a searched margin is told by. */
export const useLadder: readonly number[] = marginLadder.reduce<readonly number[]>(
  (rungs, { upTo, points }) => [
    ...rungs,
    ...rungsAbove(rungs.at(-1)!, Math.min(upTo, largestUseFactor), points),
  ],
  [0],
);

function rungsAbove(from: number, upTo: number, points: number): number[] {
  const rungs = Math.round(((upTo - from) * pointsAFactor) / points);
  return Array.from({ length: rungs }, (_, rung) => from + ((rung + 1) * points) / pointsAFactor);
}

/** The highest rung: a margin there is capped. */
export const topRung = useLadder.length - 1;

/** The lowest rung with at least a factor; above the top where there is none. */
export function rungAtLeast(factor: number): number {
  const rounding = 1e-9;
  const rung = useLadder.findIndex((each) => each >= factor - rounding);
  return rung < 0 ? topRung + 1 : rung;
}

/** Whether a history carries the use of the plan times the factor of a rung. */
export type CarriesRung = (history: number, rung: number) => boolean;

/** Which histories fail soonest; kits alike fail in the same ones, so that they share it. */
export type HardestFirst = number[];

/**
 * Whether all but `allowed` histories carry a rung. Ends at the first failure too many, or when as many carry it as must;
 * histories that fail move to the front of `order`.
 */
export function isCarried(carries: CarriesRung, rung: number, order: HardestFirst, allowed: number): boolean {
  let failed = 0;
  for (let at = 0; at - failed < order.length - allowed; at += 1) {
    const history = order[at]!;
    if (carries(history, rung)) continue;
    order.copyWithin(1, 0, at);
    order[0] = history;
    failed += 1;
    if (failed > allowed) return false;
  }
  return true;
}

/**
 * The highest rung above `floor` and up to `most` that all but `allowed` histories carry; null when there is none. Every rung above
 * it is tried and refused: the rules of the flow serve in order of need, so that a little more use may be carried where a little
 * less is not, and what one rung says holds for no other.
 */
export function highestCarried(
  floor: number,
  most: number,
  carries: CarriesRung,
  order: HardestFirst,
  allowed: number,
): number | null {
  for (let rung = most; rung > floor; rung -= 1) if (isCarried(carries, rung, order, allowed)) return rung;
  return null;
}

/**
 * The same, where a history that carries a rung carries all below it: by halves.
 *
 * @param floor -1 or more
 */
export function highestMonotone(
  floor: number,
  carries: CarriesRung,
  order: HardestFirst,
  allowed: number,
): number | null {
  let [carried, refused] = [floor, topRung + 1];
  for (let rung = floor + 1; refused - carried > 1; rung = (carried + refused) >> 1) {
    if (isCarried(carries, rung, order, allowed)) carried = rung;
    else refused = rung;
  }
  return carried === floor ? null : carried;
}
