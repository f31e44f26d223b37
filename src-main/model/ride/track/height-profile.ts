import { mostTrackHeights } from '../../../../shared-types/track.ts';
import type { RiddenTrack } from './ridden-track.ts';

/** Heights of the profile are kept to 0.1 m. */
const heightDigits = 10;

/** Heights at equal distances from start to end, m; as many as there are nodes, up to `mostTrackHeights`. */
export function heightProfile(track: RiddenTrack, heightsM: Float64Array): number[] {
  const kept = Math.min(mostTrackHeights, track.nodes);
  const profileM: number[] = [];
  let at = 0;
  for (let index = 0; index < kept; index += 1) {
    const km = (index / (kept - 1)) * track.distanceKm;
    while (at + 1 < track.segments.length && track.segments[at]!.endKm < km) at += 1;
    const { firstNode, steps, startKm, stepKm } = track.segments[at]!;
    const step = Math.min(steps - 1, Math.max(0, Math.floor((km - startKm) / stepKm)));
    const part = Math.min(1, (km - startKm) / stepKm - step);
    const fromM = heightsM[firstNode + step]!;
    const heightM = fromM + part * (heightsM[firstNode + step + 1]! - fromM);
    profileM.push(Math.round(heightM * heightDigits) / heightDigits);
  }
  return profileM;
}

/** Mean height over the ridden distance, m. */
export function meanHeightM(track: RiddenTrack, heightsM: Float64Array): number {
  let sum = 0;
  for (const { firstNode, steps, stepKm } of track.segments) {
    for (let node = firstNode; node < firstNode + steps; node += 1)
      sum += stepKm * (heightsM[node]! + heightsM[node + 1]!) * 0.5;
  }
  return sum / track.distanceKm;
}
