import { greatCircleKm } from '../../../../shared-types/great-circle.ts';
import type { PointStore } from './point-store.ts';

/** A segment of more than no length, and the equal steps it is cut into. */
export interface RiddenSegment {
  readonly firstPoint: number;
  readonly lastPoint: number;
  /** Where it begins and ends along the ridden distance of the whole track, km. */
  readonly startKm: number;
  readonly endKm: number;
  /** Its first node among the nodes of the track; it has one node more than steps. */
  readonly firstNode: number;
  readonly steps: number;
  readonly stepKm: number;
}

/** A track as it was ridden: along its segments, without the gaps between them. */
export interface RiddenTrack {
  /** Ridden distance up to each point, km; the same at the end of a segment and at the start of the next. */
  readonly alongKm: Float64Array;
  readonly distanceKm: number;
  readonly segments: readonly RiddenSegment[];
  readonly nodes: number;
}

/** Heights are taken at steps of about this length, km: one second of a fast descent (common practice, no source). */
const usualStepKm = 0.02;
/** Steps grow with the track so that there are never many more than these, however long it is. */
const mostSteps = 500_000;

/**
 * Measures a track along great circles and cuts each segment into equal steps: as many as its length holds steps of 20 m,
 * rounded, so that the steps are the same whichever way the track is ridden.
 */
export function rideAlong(points: PointStore): RiddenTrack {
  const alongKm = distanceAlong(points);
  const distanceKm = points.count === 0 ? 0 : alongKm[points.count - 1]!;
  const usualKm = Math.max(usualStepKm, distanceKm / mostSteps);
  const segments: RiddenSegment[] = [];
  let nodes = 0;
  points.segmentStarts.forEach((firstPoint, index) => {
    const lastPoint = (points.segmentStarts[index + 1] ?? points.count) - 1;
    const startKm = alongKm[firstPoint]!;
    const endKm = alongKm[lastPoint]!;
    if (!(endKm > startKm)) return;
    const steps = Math.max(1, Math.round((endKm - startKm) / usualKm));
    const stepKm = (endKm - startKm) / steps;
    segments.push({ firstPoint, lastPoint, startKm, endKm, firstNode: nodes, steps, stepKm });
    nodes += steps + 1;
  });
  return { alongKm, distanceKm, segments, nodes };
}

function distanceAlong(points: PointStore): Float64Array {
  const alongKm = new Float64Array(points.count);
  const from = { latDeg: 0, lonDeg: 0 };
  const to = { latDeg: 0, lonDeg: 0 };
  let nextSegment = 0;
  for (let index = 0; index < points.count; index += 1) {
    to.latDeg = points.latDeg[index]!;
    to.lonDeg = points.lonDeg[index]!;
    const begins = points.segmentStarts[nextSegment] === index;
    if (begins) nextSegment += 1;
    if (index > 0) alongKm[index] = alongKm[index - 1]! + (begins ? 0 : greatCircleKm(from, to));
    from.latDeg = to.latDeg;
    from.lonDeg = to.lonDeg;
  }
  return alongKm;
}
