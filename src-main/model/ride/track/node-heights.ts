import type { PointStore } from './point-store.ts';
import type { RiddenTrack } from './ridden-track.ts';
import { steepestPct } from './stretch-cells.ts';

/** Heights along the ridden distance, with what was not ridden left out. */
export interface TrackHeights {
  /** At the nodes of the track, m: as ridden from the first height on. */
  readonly riddenM: Float64Array;
  /** Where the next segment began higher or lower, by rising distance: a way that was not ridden. */
  readonly leaps: readonly Leap[];
}

export interface Leap {
  readonly atKm: number;
  readonly riseM: number;
}

/** Known heights, by rising distance. */
interface Knots {
  count: number;
  readonly km: Float64Array;
  readonly heightM: Float64Array;
}

/**
 * Heights at the nodes of a track: straight between the points that have one, level before the first and after the last.
 *
 * @returns null when no point has a height
 */
export function nodeHeights(points: PointStore, track: RiddenTrack): TrackHeights | null {
  const leaps: Leap[] = [];
  const knots = collectKnots(points, track.alongKm, leaps);
  return knots.count === 0 ? null : { riddenM: sampleKnots(knots, track), leaps };
}

/** The points that have a height, less the leaps before them; those at one distance, as when standing, count as one with their mean. */
function collectKnots(points: PointStore, alongKm: Float64Array, leaps: Leap[]): Knots {
  const { count, elevationM, segmentStarts } = points;
  const knots: Knots = { count: 0, km: new Float64Array(count), heightM: new Float64Array(count) };
  let segment = 0;
  let begins = false;
  let leaptM = 0;
  let same = 0;
  for (let index = 0; index < count; index += 1) {
    if (segmentStarts[segment] === index) {
      segment += 1;
      begins = true;
    }
    if (Number.isNaN(elevationM[index])) continue;
    const km = alongKm[index]!;
    const riseM = elevationM[index]! - leaptM - (knots.count === 0 ? NaN : knots.heightM[knots.count - 1]!);
    if (begins && isLeap(riseM, km - (knots.km[knots.count - 1] ?? km))) {
      leaps.push({ atKm: km, riseM });
      leaptM += riseM;
    }
    begins = false;
    same = addKnot(knots, km, elevationM[index]! - leaptM, same);
  }
  return knots;
}

/** Heights of one place that differ by less may be wavering, m. Common practice, no source. */
const leastLeapM = 10;
const mPerKmPct = 10;

/** Whether no road can rise so much over what was ridden from one segment into the next. */
function isLeap(riseM: number, riddenKm: number): boolean {
  return Math.abs(riseM) > leastLeapM + steepestPct * mPerKmPct * riddenKm;
}

/** @returns how many heights the last knot stands for */
function addKnot(knots: Knots, km: number, heightM: number, same: number): number {
  const last = knots.count - 1;
  if (last >= 0 && knots.km[last] === km) {
    knots.heightM[last]! += (heightM - knots.heightM[last]!) / (same + 1);
    return same + 1;
  }
  knots.km[knots.count] = km;
  knots.heightM[knots.count] = heightM;
  knots.count += 1;
  return 1;
}

function sampleKnots(knots: Knots, { steps, stepKm }: RiddenTrack): Float64Array {
  const heightsM = new Float64Array(steps + 1);
  let before = 0;
  for (let node = 0; node <= steps; node += 1) {
    const km = node * stepKm;
    while (before + 1 < knots.count && knots.km[before + 1]! <= km) before += 1;
    heightsM[node] = heightBetween(knots, before, km);
  }
  return heightsM;
}

function heightBetween({ count, km: knotKm, heightM }: Knots, before: number, km: number): number {
  const fromKm = knotKm[before]!;
  const fromM = heightM[before]!;
  if (before + 1 === count || km <= fromKm) return fromM;
  return fromM + ((heightM[before + 1]! - fromM) * (km - fromKm)) / (knotKm[before + 1]! - fromKm);
}
