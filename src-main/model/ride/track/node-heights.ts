import type { PointStore } from './point-store.ts';
import type { RiddenSegment, RiddenTrack } from './ridden-track.ts';

/** Known heights along a segment, by rising distance. */
interface Knots {
  count: number;
  readonly km: Float64Array;
  readonly heightM: Float64Array;
}

/**
 * Heights at the nodes of a track, m: straight between the points that have one, level before the first and after the last
 * of a segment. A segment without any lies straight between those before and after it.
 *
 * @returns null when no point has a height
 */
export function nodeHeights(points: PointStore, track: RiddenTrack): Float64Array | null {
  const heightsM = new Float64Array(track.nodes).fill(NaN);
  const knots: Knots = {
    count: 0,
    km: new Float64Array(points.count),
    heightM: new Float64Array(points.count),
  };
  let known = false;
  for (const segment of track.segments) {
    collectKnots(points, track.alongKm, segment, knots);
    if (knots.count === 0) continue;
    known = true;
    sampleKnots(knots, segment, heightsM);
  }
  if (!known) return null;
  fillSegmentsWithout(track.segments, heightsM, knots);
  return heightsM;
}

/** The points of a segment that have a height; those at one distance, as when standing, count as one with their mean. */
function collectKnots(points: PointStore, alongKm: Float64Array, segment: RiddenSegment, knots: Knots): void {
  knots.count = 0;
  let sameM = 0;
  let same = 0;
  for (let index = segment.firstPoint; index <= segment.lastPoint; index += 1) {
    const heightM = points.elevationM[index]!;
    if (Number.isNaN(heightM)) continue;
    const last = knots.count - 1;
    const standing = last >= 0 && knots.km[last] === alongKm[index];
    sameM = standing ? sameM + heightM : heightM;
    same = standing ? same + 1 : 1;
    if (!standing) knots.count += 1;
    knots.km[knots.count - 1] = alongKm[index]!;
    knots.heightM[knots.count - 1] = sameM / same;
  }
}

function sampleKnots(knots: Knots, segment: RiddenSegment, heightsM: Float64Array): void {
  let before = 0;
  for (let step = 0; step <= segment.steps; step += 1) {
    const km = segment.startKm + step * segment.stepKm;
    while (before + 1 < knots.count && knots.km[before + 1]! <= km) before += 1;
    heightsM[segment.firstNode + step] = heightBetween(knots, before, km);
  }
}

function heightBetween({ count, km: knotKm, heightM }: Knots, before: number, km: number): number {
  const fromKm = knotKm[before]!;
  const fromM = heightM[before]!;
  if (before + 1 === count || km <= fromKm) return fromM;
  return fromM + ((heightM[before + 1]! - fromM) * (km - fromKm)) / (knotKm[before + 1]! - fromKm);
}

function fillSegmentsWithout(segments: readonly RiddenSegment[], heightsM: Float64Array, knots: Knots): void {
  const lacks = (index: number): boolean =>
    index < segments.length && Number.isNaN(heightsM[segments[index]!.firstNode]);
  for (let first = 0; first < segments.length; first += 1) {
    if (!lacks(first)) continue;
    let end = first;
    while (lacks(end)) end += 1;
    lineAcross(segments, first, end, heightsM, knots);
    first = end;
  }
}

/** Lays the segments `first` up to `end` on a line from the height before them to that after them; level where one is missing. */
function lineAcross(
  segments: readonly RiddenSegment[],
  first: number,
  end: number,
  heightsM: Float64Array,
  knots: Knots,
): void {
  const before = segments[first - 1];
  const after = segments[end];
  const afterM = after === undefined ? NaN : heightsM[after.firstNode]!;
  const beforeM = before === undefined ? afterM : heightsM[before.firstNode + before.steps]!;
  knots.count = 2;
  knots.km.set([segments[first]!.startKm, segments[end - 1]!.endKm]);
  knots.heightM.set([beforeM, after === undefined ? beforeM : afterM]);
  for (const segment of segments.slice(first, end)) sampleKnots(knots, segment, heightsM);
}
