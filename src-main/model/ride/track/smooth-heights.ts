import { nodeHeights } from './node-heights.ts';
import type { PointStore } from './point-store.ts';
import type { RiddenSegment, RiddenTrack } from './ridden-track.ts';

/** A moving mean over this distance, km, so many times. Common practice, no source: see below. */
const windowKm = 0.1;
const passes = 2;

/**
 * Heights at the nodes of a track, m, smoothed over distance: a moving mean over about 100 m, twice. Common practice, no
 * source: satellite heights waver by metres within a few seconds, and an altimeter's steps of a metre make slopes of 5 % over
 * 20 m, while roads seldom change their grade within less. The window narrows to both sides alike towards the ends of a
 * segment, so that a steady ramp stays exactly what it is and smoothing never adds climb.
 *
 * @returns null when no point has a height
 */
export function smoothHeights(points: PointStore, track: RiddenTrack): Float64Array | null {
  const heightsM = nodeHeights(points, track);
  if (heightsM === null) return null;
  const rougherM = new Float64Array(track.nodes);
  for (let pass = 0; pass < passes; pass += 1) {
    rougherM.set(heightsM);
    for (const segment of track.segments) movingMean(rougherM, segment, heightsM);
  }
  return heightsM;
}

function movingMean(fromM: Float64Array, segment: RiddenSegment, toM: Float64Array): void {
  const { firstNode, steps, stepKm } = segment;
  // A mean of an odd number of nodes, each standing for one step.
  const widest = Math.max(0, Math.round((windowKm / stepKm - 1) / 2));
  for (let node = 0; node <= steps; node += 1) {
    const reach = Math.min(widest, node, steps - node);
    let sumM = 0;
    for (let near = node - reach; near <= node + reach; near += 1) sumM += fromM[firstNode + near]!;
    toM[firstNode + node] = sumM / (2 * reach + 1);
  }
}
