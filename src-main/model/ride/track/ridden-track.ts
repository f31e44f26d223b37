import { greatCircleKm } from '../../../../shared-types/great-circle.ts';
import type { PointStore } from './point-store.ts';
import { findStops } from './stops.ts';
import type { PointRange } from './timed-runs.ts';

/** A track as it was ridden: along its segments, without the gaps between them and without what the positions wandered at stops. */
export interface RiddenTrack {
  /** Ridden distance up to each point, km; the same at the end of a segment and at the start of the next. */
  readonly alongKm: Float64Array;
  readonly distanceKm: number;
  /** Where the bicycle stood. */
  readonly stops: readonly PointRange[];
  /** The equal steps that the distance is cut into, for heights and grades; there is one node more. */
  readonly steps: number;
  readonly stepKm: number;
}

/** Heights are taken at steps of about this length, km: one second of a fast descent (common practice, no source). */
const usualStepKm = 0.02;
/** Steps grow with the track so that there are never many more than these, however long it is. */
const mostSteps = 500_000;

/**
 * Measures a track along great circles and cuts it into equal steps: as many as its length holds steps of 20 m, rounded, so
 * that the steps are the same whichever way the track is ridden.
 */
export function rideAlong(points: PointStore): RiddenTrack {
  const stops = findStops(points);
  const alongKm = distanceAlong(points, stops);
  const distanceKm = points.count === 0 ? 0 : alongKm[points.count - 1]!;
  const usualKm = Math.max(usualStepKm, distanceKm / mostSteps);
  const steps = Math.max(1, Math.round(distanceKm / usualKm));
  return { alongKm, distanceKm, stops, steps, stepKm: distanceKm / steps };
}

/** At a stop the positions wander less far than this, km; what goes farther was ridden or pushed. Common practice, no source. */
const wanderKm = 0.03;

/** Distance is counted from point to point; at a stop straight from where it began, once that is far enough, or at its end. */
function distanceAlong(
  { count, latDeg, lonDeg, segmentStarts }: PointStore,
  stops: readonly PointRange[],
): Float64Array {
  const alongKm = new Float64Array(count);
  const from = { latDeg: 0, lonDeg: 0 };
  const to = { latDeg: 0, lonDeg: 0 };
  let segment = 0;
  let stop = 0;
  for (let index = 0; index < count; index += 1) {
    to.latDeg = latDeg[index]!;
    to.lonDeg = lonDeg[index]!;
    const begins = segmentStarts[segment] === index;
    if (begins) segment += 1;
    while (stop < stops.length && stops[stop]!.last <= index) stop += 1;
    const standing = stop < stops.length && stops[stop]!.first < index;
    const km = begins ? 0 : greatCircleKm(from, to);
    const counts = begins || !standing || km >= wanderKm;
    if (index > 0) alongKm[index] = alongKm[index - 1]! + (counts ? km : 0);
    if (!counts) continue;
    from.latDeg = to.latDeg;
    from.lonDeg = to.lonDeg;
  }
  return alongKm;
}
