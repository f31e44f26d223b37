import { greatCircleKm } from '../../../../shared-types/great-circle.ts';
import { shortWayDeg } from './mean-place.ts';
import type { PointStore } from './point-store.ts';
import { timedRuns, type PointRange } from './timed-runs.ts';

/** Slower is a stop. Common practice, no source. */
export const slowestMovingKmh = 3;
/** Movement is judged over this long, and no shorter time counts as a stop. Common practice, no source: see below. */
const windowS = 20;
export const secondsAnHour = 3600;
/** What the slowest movement covers in a window, km: noise of a few metres stays below it. */
export const stillKm = (slowestMovingKmh * windowS) / secondsAnHour;

/**
 * Where the bicycle stood, by rising points. The positions of a receiver that stands waver by metres from second to second and
 * drift over minutes: summed up they look like slow riding. So it is the straight line from a point to where the bicycle is a
 * window later, and to where it was a window before, that says whether it moves. Riding there and back comes close to itself
 * for less than a window and is no stop.
 */
export function findStops(points: PointStore): PointRange[] {
  const still = new Uint8Array(points.count);
  const stops: PointRange[] = [];
  for (const { first, last } of timedRuns(points)) {
    markStill(points, first, last, still);
    markStill(points, last, first, still);
    collectStops(points.timeS, still, first, last, stops);
  }
  return stops;
}

/**
 * Marks each pair of points, at its earlier one, from which the bicycle gets nowhere within a window.
 *
 * @param to after `from` to look ahead, before it to look back
 */
function markStill({ latDeg, lonDeg, timeS }: PointStore, from: number, to: number, still: Uint8Array): void {
  const step = to > from ? 1 : -1;
  const here = { latDeg: 0, lonDeg: 0 };
  const there = { latDeg: 0, lonDeg: 0 };
  let near = from;
  let far = from;
  for (let index = from; index !== to; index = nextTimed(timeS, index, step)) {
    while (far !== to && Math.abs(timeS[far]! - timeS[index]!) < windowS) {
      near = far;
      far = nextTimed(timeS, far, step);
    }
    const farS = Math.abs(timeS[far]! - timeS[index]!);
    if (farS < windowS) return;
    const nearS = Math.abs(timeS[near]! - timeS[index]!);
    const part = (windowS - nearS) / (farS - nearS);
    here.latDeg = latDeg[index]!;
    here.lonDeg = lonDeg[index]!;
    there.latDeg = latDeg[near]! + part * (latDeg[far]! - latDeg[near]!);
    there.lonDeg = lonDeg[near]! + part * shortWayDeg(lonDeg[far]! - lonDeg[near]!);
    if (greatCircleKm(here, there) < stillKm) still[Math.min(index, nextTimed(timeS, index, step))] = 1;
  }
}

/** The next point that carries a time; there is one up to the end of a run. */
function nextTimed(timeS: Float64Array, index: number, step: 1 | -1): number {
  let next = index + step;
  while (Number.isNaN(timeS[next])) next += step;
  return next;
}

function collectStops(
  timeS: Float64Array,
  still: Uint8Array,
  first: number,
  last: number,
  stops: PointRange[],
): void {
  let begin = first;
  for (let index = first; ; index = nextTimed(timeS, index, 1)) {
    if (index < last && still[index] === 1) continue;
    if (timeS[index]! - timeS[begin]! >= windowS) stops.push({ first: begin, last: index });
    if (index === last) return;
    begin = nextTimed(timeS, index, 1);
  }
}
