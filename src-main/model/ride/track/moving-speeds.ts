import type { PointStore } from './point-store.ts';
import type { RiddenTrack } from './ridden-track.ts';

/** A speed is taken over at least this long: over a second or two it shows the noise of the positions. Common practice, no source. */
const shortestStretchS = 10;
/** Slower is a stop, faster was not cycled (a train, a jump of the position). Common practice, no source. */
export const slowestMovingKmh = 3;
export const fastestRiddenKmh = 100;

const secondsAnHour = 3600;

/**
 * Recorded moving speed from each point to the next, km/h; NaN where there is none: no times, times that go back, a stop, or
 * too fast to have been cycled. Over each stretch distance/speed adds up to its recorded time.
 */
export function movingSpeeds(points: PointStore, track: RiddenTrack): Float64Array {
  const speedsKmh = new Float64Array(points.count).fill(NaN);
  for (const { firstPoint, lastPoint } of track.segments) {
    let from = nextTimed(points.timeS, firstPoint, lastPoint);
    while (from < lastPoint) {
      const end = endOfRun(points.timeS, from, lastPoint);
      measureRun(points.timeS, track.alongKm, from, end, speedsKmh);
      from = nextTimed(points.timeS, end + 1, lastPoint);
    }
  }
  return speedsKmh;
}

function nextTimed(timeS: Float64Array, from: number, last: number): number {
  let index = from;
  while (index <= last && Number.isNaN(timeS[index])) index += 1;
  return index;
}

/** The last timed point up to which no time goes back. */
function endOfRun(timeS: Float64Array, from: number, last: number): number {
  let end = from;
  for (let index = from + 1; index <= last; index += 1) {
    if (timeS[index]! < timeS[end]!) break;
    if (!Number.isNaN(timeS[index])) end = index;
  }
  return end;
}

/** Cuts a run into stretches that last long enough; what is left at its end goes with the last one. */
function measureRun(
  timeS: Float64Array,
  alongKm: Float64Array,
  from: number,
  end: number,
  speedsKmh: Float64Array,
): void {
  let start = from;
  for (let index = from + 1; index <= end; index += 1) {
    const lasts = timeS[index]! - timeS[start]! >= shortestStretchS;
    const enoughLeft = timeS[end]! - timeS[index]! >= shortestStretchS;
    if (!lasts || !(enoughLeft || index === end)) continue;
    const km = alongKm[index]! - alongKm[start]!;
    const kmh = (km / (timeS[index]! - timeS[start]!)) * secondsAnHour;
    if (kmh >= slowestMovingKmh && kmh <= fastestRiddenKmh) speedsKmh.fill(kmh, start, index);
    start = index;
  }
}
