import { mostTrackHeights } from '../../../../shared-types/track.ts';
import type { TrackHeights } from './node-heights.ts';
import type { RiddenTrack } from './ridden-track.ts';

/** Heights of the profile are kept to 0.1 m. */
const heightDigits = 10;

/** Heights at equal distances from start to end, m, leaps included; as many as there are nodes, up to `mostTrackHeights`. */
export function heightProfile({ distanceKm, steps, stepKm }: RiddenTrack, heights: TrackHeights): number[] {
  const { riddenM } = heights;
  const leaptM = leaptAlong(heights);
  const kept = Math.min(mostTrackHeights, steps + 1);
  const profileM: number[] = [];
  for (let index = 0; index < kept; index += 1) {
    const km = (index / (kept - 1)) * distanceKm;
    const step = Math.min(steps - 1, Math.floor(km / stepKm));
    const part = Math.min(1, km / stepKm - step);
    const heightM = riddenM[step]! + part * (riddenM[step + 1]! - riddenM[step]!) + leaptM(km);
    profileM.push(Math.round(heightM * heightDigits) / heightDigits);
  }
  return profileM;
}

/** Mean height over the ridden distance, m. */
export function meanHeightM({ steps, stepKm }: RiddenTrack, heights: TrackHeights): number {
  const { riddenM } = heights;
  const leaptM = leaptAlong(heights);
  let sumM = 0;
  for (let step = 0; step < steps; step += 1)
    sumM += (riddenM[step]! + riddenM[step + 1]!) / 2 + leaptM((step + 0.5) * stepKm);
  return sumM / steps;
}

/** How much higher than ridden the track lies after its leaps, m, asked for at rising distances, km. */
function leaptAlong({ leaps }: TrackHeights): (km: number) => number {
  let next = 0;
  let leaptM = 0;
  return (km) => {
    for (; next < leaps.length && leaps[next]!.atKm <= km; next += 1) leaptM += leaps[next]!.riseM;
    return leaptM;
  };
}
