import { mostTrackPieces } from '../../../../shared-types/track.ts';
import type { RiddenSegment, RiddenTrack } from './ridden-track.ts';
import { addDistance, createCells, gradeCellOf, type StretchCells } from './stretch-cells.ts';

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
 * @param heightsM smoothed heights at the nodes; null counts as level
 * @param speedsKmh from each point to the next, NaN where there is none
 */
export function cutPieces(
  track: RiddenTrack,
  heightsM: Float64Array | null,
  speedsKmh: Float64Array,
): StretchCells {
  const pieces = pieceCount(track.distanceKm);
  const cells = createCells(pieces);
  const pieceKm = track.distanceKm / pieces;
  const gradeCells = heightsM === null ? null : gradesOfSteps(track, heightsM);
  for (const segment of track.segments) cutSegment(track, segment, gradeCells, speedsKmh, pieceKm, cells);
  return cells;
}

/** The cell of each step's grade, at the node where the step begins. */
function gradesOfSteps(track: RiddenTrack, heightsM: Float64Array): Uint8Array {
  const gradeCells = new Uint8Array(track.nodes);
  for (const { firstNode, steps, stepKm } of track.segments) {
    for (let node = firstNode; node < firstNode + steps; node += 1) {
      const rise = (heightsM[node + 1]! - heightsM[node]!) / (stepKm * metresAKm);
      gradeCells[node] = gradeCellOf(rise * 100);
    }
  }
  return gradeCells;
}

const level = gradeCellOf(0);

/** Walks along a segment from one border to the next, be it of a point, a step or a piece. */
function cutSegment(
  track: RiddenTrack,
  segment: RiddenSegment,
  gradeCells: Uint8Array | null,
  speedsKmh: Float64Array,
  pieceKm: number,
  cells: StretchCells,
): void {
  const { startKm, endKm, firstNode, steps, stepKm } = segment;
  const lastPiece = pieceCount(track.distanceKm) - 1;
  let point = segment.firstPoint;
  let step = 0;
  let piece = Math.min(lastPiece, Math.floor(startKm / pieceKm));
  for (let km = startKm; km < endKm;) {
    const pointEndKm = track.alongKm[point + 1]!;
    const stepEndKm = step + 1 < steps ? startKm + (step + 1) * stepKm : endKm;
    const pieceEndKm = piece < lastPiece ? (piece + 1) * pieceKm : endKm;
    const nextKm = Math.min(pointEndKm, stepEndKm, pieceEndKm);
    const gradeCell = gradeCells === null ? level : gradeCells[firstNode + step]!;
    if (nextKm > km) addDistance(cells, piece, gradeCell, speedsKmh[point]!, nextKm - km);
    km = Math.max(km, nextKm);
    if (nextKm === pointEndKm) point += 1;
    if (nextKm === stepEndKm) step += 1;
    if (nextKm === pieceEndKm) piece += 1;
  }
}
