import { mostTrackPieces } from '../../../../shared-types/track.ts';
import type { RiddenTrack } from './ridden-track.ts';
import { addDistance, createCells, type StretchCells } from './stretch-cells.ts';

/** Pieces are at least this long, km: a shorter one says nothing of a day. */
const shortestPieceKm = 10;

const metresAKm = 1000;

/** How many pieces of equal length a track is kept in. */
export function pieceCount(distanceKm: number): number {
  return Math.min(mostTrackPieces, Math.max(1, Math.floor(distanceKm / shortestPieceKm)));
}

/**
 * Spreads a track over cells of grade and recorded speed, piece by piece. Every bit of distance has the grade of the step
 * and the speed of the pair of points that it lies between, so neither distance nor riding time is lost.
 *
 * @param heightsM heights at the nodes; null counts as level
 * @param speedsKmh from each point to the next, NaN where there is none
 */
export function cutPieces(
  track: RiddenTrack,
  heightsM: Float64Array | null,
  speedsKmh: Float64Array,
): StretchCells {
  const { alongKm, distanceKm, steps, stepKm } = track;
  const pieces = pieceCount(distanceKm);
  const pieceKm = distanceKm / pieces;
  const cells = createCells(pieces);
  let [point, step, piece] = [0, 0, 0];
  // From one border to the next, be it of a point, a step or a piece.
  for (let km = 0; km < distanceKm;) {
    const pointEndKm = alongKm[point + 1]!;
    const stepEndKm = step + 1 < steps ? (step + 1) * stepKm : distanceKm;
    const pieceEndKm = piece + 1 < pieces ? (piece + 1) * pieceKm : distanceKm;
    const nextKm = Math.min(pointEndKm, stepEndKm, pieceEndKm);
    const gradePct = heightsM === null ? 0 : gradePctOf(track, heightsM, step);
    if (nextKm > km) addDistance(cells, piece, gradePct, speedsKmh[point]!, nextKm - km);
    km = Math.max(km, nextKm);
    if (nextKm === pointEndKm) point += 1;
    if (nextKm === stepEndKm) step += 1;
    if (nextKm === pieceEndKm) piece += 1;
  }
  return cells;
}

function gradePctOf({ stepKm }: RiddenTrack, heightsM: Float64Array, step: number): number {
  return ((heightsM[step + 1]! - heightsM[step]!) / (stepKm * metresAKm)) * 100;
}
