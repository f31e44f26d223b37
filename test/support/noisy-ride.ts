import { randomStreams, standardNormal, type RandomStream } from '../../src-main/model/random.ts';
import { metresADegree, type TestPoint } from './track-points.ts';

/** How the positions of a receiver go astray, m: anew at each point, or drifting about the truth over minutes. */
export interface Noise {
  readonly as: 'white' | 'drifting';
  readonly spreadM: number;
}

const degPerRad = 180 / Math.PI;
/** A drift is forgotten over about this long, s. */
const driftS = 60;

/** Draws how far a point lies astray along one axis, m. */
function astray({ as, spreadM }: Noise, everyS: number, stream: RandomStream): () => number {
  const kept = as === 'white' ? 0 : Math.exp(-everyS / driftS);
  let offM = spreadM * standardNormal(stream);
  return () => (offM = kept * offM + Math.sqrt(1 - kept * kept) * spreadM * standardNormal(stream));
}

const speedMs = 5;
const rideS = 3600;

/** What the ride below covers and how long it moves. */
export const noisyRideKm = (2 * rideS * speedMs) / 1000;
export const noisyRideHours = (2 * rideS) / 3600;

/** An hour north at 18 km/h, a stop of 30 min at which the positions go astray, and an hour on. */
export function rideWithStop(noise: Noise, everyS: number): TestPoint[] {
  const stopS = 1800;
  const stream = randomStreams(3).next().value;
  const [eastM, northM] = [astray(noise, everyS, stream), astray(noise, everyS, stream)];
  const points: TestPoint[] = [];
  for (let timeS = 0; timeS <= 2 * rideS + stopS; timeS += everyS) {
    const standing = timeS > rideS && timeS < rideS + stopS;
    const alongM = speedMs * (Math.min(timeS, rideS) + Math.max(0, timeS - rideS - stopS));
    const latDeg = 45 + (alongM + (standing ? northM() : 0)) / metresADegree;
    const lonDeg = 7 + (standing ? eastM() : 0) / (metresADegree * Math.cos(latDeg / degPerRad));
    points.push({ latDeg, lonDeg, timeS });
  }
  return points;
}
