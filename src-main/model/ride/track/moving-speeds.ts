import type { PointStore } from './point-store.ts';
import type { RiddenTrack } from './ridden-track.ts';
import { secondsAnHour, slowestMovingKmh, stillKm } from './stops.ts';
import { timedRuns, type PointRange } from './timed-runs.ts';

/** A speed is taken over at least this long: over a second or two it shows the noise of the positions. Common practice, no source. */
const shortestStretchS = 10;
/** Faster was not cycled (a train, a jump of the position). Common practice, no source. */
export const fastestRiddenKmh = 100;

/**
 * Recorded moving speed from each point to the next, km/h; NaN where there is none: no times, times that go back, a stop, or
 * too fast to have been cycled. Over each stretch distance/speed adds up to its recorded time.
 */
export function movingSpeeds(points: PointStore, { alongKm, stops }: RiddenTrack): Float64Array {
  const speedsKmh = new Float64Array(points.count).fill(NaN);
  let stop = 0;
  for (const { first, last } of timedRuns(points)) {
    let start = first;
    for (; stop < stops.length && stops[stop]!.first < last; stop += 1) {
      measure(points.timeS, alongKm, { first: start, last: stops[stop]!.first }, speedsKmh);
      start = stops[stop]!.last;
    }
    measure(points.timeS, alongKm, { first: start, last }, speedsKmh);
  }
  for (const each of stops) rollThrough(alongKm, each, speedsKmh);
  return speedsKmh;
}

/** Cuts what was ridden without a stop into stretches that last long enough; what is left at its end goes with the last one. */
function measure(
  timeS: Float64Array,
  alongKm: Float64Array,
  { first, last }: PointRange,
  speedsKmh: Float64Array,
): void {
  let start = first;
  for (let index = first + 1; index <= last; index += 1) {
    const lasts = timeS[index]! - timeS[start]! >= shortestStretchS;
    const enoughLeft = timeS[last]! - timeS[index]! >= shortestStretchS;
    if (!lasts || !(enoughLeft || index === last)) continue;
    const km = alongKm[index]! - alongKm[start]!;
    const kmh = (km / (timeS[index]! - timeS[start]!)) * secondsAnHour;
    if (kmh >= slowestMovingKmh && kmh <= fastestRiddenKmh) speedsKmh.fill(kmh, start, index);
    start = index;
  }
}

/**
 * A stop is seen from a few metres before it until a few metres after it: these were ridden as before the stop, or as after it
 * where nothing was ridden before. More than that was pushed, or the recorder slept: its speed is not known.
 */
function rollThrough(alongKm: Float64Array, { first, last }: PointRange, speedsKmh: Float64Array): void {
  const km = alongKm[last]! - alongKm[first]!;
  if (km === 0 || km > 2 * stillKm) return;
  const beforeKmh = first > 0 ? speedsKmh[first - 1]! : NaN;
  speedsKmh.fill(Number.isNaN(beforeKmh) ? speedsKmh[last]! : beforeKmh, first, last);
}
