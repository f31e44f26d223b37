import type { GradeShare, TrackProfile } from '../../../shared-types/tour.ts';
import { greatCircleKm } from '../../../shared-types/great-circle.ts';

/** A point of a track; elevation is null where the file gives none. */
export interface TrackPoint {
  readonly latDeg: number;
  readonly lonDeg: number;
  readonly elevationM: number | null;
}

/** Grades are taken over stretches of this length: shorter ones mostly show the noise of the altimeter (common practice, no source). */
const stretchKm = 0.2;
/** Grades fall into bins of this width, %, and are held within the steepest road worth riding. */
const binPct = 1;
const steepestPct = 24;
/** A shorter track is a point. */
export const shortestTrackKm = 0.1;

/**
 * Boils segments of points down to what riding needs: distance, climb and the share of distance at each grade. Segments are
 * not joined: a gap between them is not ridden. Points without elevation count as level with the last known one.
 *
 * @returns null when the segments together are shorter than `shortestTrackKm`
 */
export function profileTrack(
  name: string,
  segments: readonly (readonly TrackPoint[])[],
): TrackProfile | null {
  const stretches = segments.flatMap(stretchesOf);
  const distanceKm = stretches.reduce((sum, stretch) => sum + stretch.km, 0);
  if (distanceKm < shortestTrackKm) return null;
  const points = segments.flat();
  const rise = (sign: 1 | -1): number =>
    stretches.reduce((sum, stretch) => sum + Math.max(0, sign * stretch.riseM), 0);
  return {
    name,
    distanceKm,
    ascentM: rise(1),
    descentM: rise(-1),
    meanElevationM: mean(points.map((point) => point.elevationM ?? 0)),
    meanLatDeg: mean(points.map((point) => point.latDeg)),
    meanLonDeg: mean(points.map((point) => point.lonDeg)),
    grades: gradesOf(stretches, distanceKm),
  };
}

interface Stretch {
  readonly km: number;
  readonly riseM: number;
}

function stretchesOf(points: readonly TrackPoint[]): Stretch[] {
  const stretches: Stretch[] = [];
  let km = 0;
  let level = points[0]?.elevationM ?? 0;
  let startLevel = level;
  points.slice(1).forEach((point, index) => {
    km += greatCircleKm(points[index]!, point);
    level = point.elevationM ?? level;
    if (km < stretchKm) return;
    stretches.push({ km, riseM: level - startLevel });
    km = 0;
    startLevel = level;
  });
  if (km > 0) stretches.push({ km, riseM: level - startLevel });
  return stretches;
}

function gradesOf(stretches: readonly Stretch[], distanceKm: number): GradeShare[] {
  const kmByBin = new Map<number, number>();
  for (const { km, riseM } of stretches) {
    const pct = Math.max(-steepestPct, Math.min(steepestPct, riseM / km / 10));
    // Rounded by size, so that a track ridden back has the mirrored grades; `+ 0` turns a negative zero into zero.
    const bin = Math.sign(pct) * Math.round(Math.abs(pct) / binPct) * binPct + 0;
    kmByBin.set(bin, (kmByBin.get(bin) ?? 0) + km);
  }
  return [...kmByBin]
    .sort(([a], [b]) => a - b)
    .map(([gradePct, km]) => ({ gradePct, share: km / distanceKm }));
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
