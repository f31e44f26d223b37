import {
  addPoint,
  beginSegment,
  createPointStore,
  type PointStore,
} from '../../src-main/model/ride/track/point-store.ts';
import type { Climb } from '../../src-main/model/ride/track/climb.ts';
import type { TrackProfile } from '../../shared-types/track.ts';

export interface TestPoint {
  readonly latDeg: number;
  readonly lonDeg: number;
  readonly elevationM?: number;
  readonly timeS?: number;
}

/** Metres of one degree of latitude on the sphere of 6371.0088 km (IUGG). */
export const metresADegree = (6_371_008.8 * Math.PI) / 180;

export function storeOf(...segments: readonly (readonly TestPoint[])[]): PointStore {
  const store = createPointStore();
  for (const points of segments) {
    beginSegment(store);
    for (const { latDeg, lonDeg, elevationM = NaN, timeS = NaN } of points)
      addPoint(store, latDeg, lonDeg, elevationM, timeS);
  }
  return store;
}

/** Points northwards from 45 degrees, `stepM` apart, at the heights given; NaN for none. */
export function northwards(stepM: number, heightsM: readonly number[]): TestPoint[] {
  return heightsM.map((elevationM, index) => ({
    latDeg: 45 + (index * stepM) / metresADegree,
    lonDeg: 7,
    elevationM,
  }));
}

/** As many points `stepM` apart, without a height, with these times. */
export function timedNorthwards(stepM: number, timesS: readonly number[]): TestPoint[] {
  return timesS.map((timeS, index) => ({
    latDeg: 45 + (index * stepM) / metresADegree,
    lonDeg: 7,
    timeS,
  }));
}

/** Share of the whole distance by grade to the nearest whole per cent, all pieces and speeds together. */
export function gradeShares({ distanceKm, pieces }: TrackProfile): Map<number, number> {
  const shares = new Map<number, number>();
  for (const piece of pieces) {
    for (const { gradePct, share } of piece.stretches) {
      // Halves away from 0, so that up and down are alike.
      const wholePct = Math.sign(gradePct) * Math.round(Math.abs(gradePct)) + 0;
      shares.set(wholePct, (shares.get(wholePct) ?? 0) + (share * piece.distanceKm) / distanceKm);
    }
  }
  return shares;
}

const mPerKmPct = 10;

/** What the grades of all stretches climb and fall together, m. */
export function riddenClimb({ pieces }: TrackProfile): Climb {
  const climb = { ascentM: 0, descentM: 0 };
  for (const { distanceKm, stretches } of pieces) {
    for (const { gradePct, share } of stretches) {
      const riseM = gradePct * share * distanceKm * mPerKmPct;
      climb.ascentM += Math.max(0, riseM);
      climb.descentM += Math.max(0, -riseM);
    }
  }
  return climb;
}

/** Hours ridden at the recorded speeds. */
export function recordedHours({ pieces }: TrackProfile): number {
  return pieces.reduce(
    (sum, { distanceKm, stretches }) =>
      sum +
      stretches.reduce(
        (hours, { speedKmh, share }) => hours + (speedKmh === null ? 0 : (share * distanceKm) / speedKmh),
        0,
      ),
    0,
  );
}
