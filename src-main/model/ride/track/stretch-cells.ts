import type { TrackStretch } from '../../../../shared-types/track.ts';
import { fastestRiddenKmh } from './moving-speeds.ts';

/** Grades are held within the steepest road worth riding, %. */
export const steepestPct = 25;
/** A cell of 1 % of grade and 5 km/h of recorded speed. */
const gradeWidthPct = 1;
const speedWidthKmh = 5;

/** Grades are kept to 1e-4 %: 1 cm in 10 km. */
const gradeDigits = 1e4;

const gradeCells = (2 * steepestPct) / gradeWidthPct + 1;
const speedCells = Math.floor(fastestRiddenKmh / speedWidthKmh) + 1;
/** One more for distance without a recorded speed. */
const cellsAGrade = speedCells + 1;
const cellsAPiece = gradeCells * cellsAGrade;

/** Distance, climb and riding time of the pieces of a track by grade and recorded speed. */
export interface StretchCells {
  readonly km: Float64Array;
  /** Grade in % times km: what the mean grade of a cell is reckoned from. */
  readonly pctKm: Float64Array;
  readonly hours: Float64Array;
}

export function createCells(pieces: number): StretchCells {
  return {
    km: new Float64Array(pieces * cellsAPiece),
    pctKm: new Float64Array(pieces * cellsAPiece),
    hours: new Float64Array(pieces * cellsAPiece),
  };
}

/** Adds distance at a grade; `speedKmh` is NaN where none was recorded. */
export function addDistance(
  cells: StretchCells,
  piece: number,
  gradePct: number,
  speedKmh: number,
  km: number,
): void {
  const heldPct = Math.max(-steepestPct, Math.min(steepestPct, gradePct));
  const timed = !Number.isNaN(speedKmh);
  const speedCell = timed ? Math.floor(speedKmh / speedWidthKmh) : speedCells;
  const cell = piece * cellsAPiece + gradeCellOf(heldPct) * cellsAGrade + speedCell;
  cells.km[cell]! += km;
  cells.pctKm[cell]! += heldPct * km;
  if (timed) cells.hours[cell]! += km / speedKmh;
}

/** Up from more than 0 to 1 %, to 2 % and so on, down likewise, level alone: the ups and downs of a cell never cancel out. */
function gradeCellOf(gradePct: number): number {
  const gradeSize = Math.round(Math.abs(gradePct) * gradeDigits) / gradeDigits;
  return (steepestPct + Math.sign(gradePct) * Math.ceil(gradeSize / gradeWidthPct)) / gradeWidthPct;
}

/** Shares are kept to 1e-7: all the cells of a piece together are then off by less than 1e-4. */
const shareDigits = 1e7;
const speedDigits = 100;

/** The distance of a piece, km, and its stretches, each at the mean grade of its cell, by rising grade, then speed, distance without a speed last. */
export function stretchesOf(
  cells: StretchCells,
  piece: number,
): { readonly distanceKm: number; readonly stretches: TrackStretch[] } {
  const from = piece * cellsAPiece;
  let distanceKm = 0;
  for (let cell = from; cell < from + cellsAPiece; cell += 1) distanceKm += cells.km[cell]!;
  const stretches: TrackStretch[] = [];
  for (let cell = from; cell < from + cellsAPiece; cell += 1) {
    const share = Math.round((cells.km[cell]! / distanceKm) * shareDigits) / shareDigits;
    if (share === 0) continue;
    stretches.push({ gradePct: meanGradePct(cells, cell), speedKmh: meanSpeedKmh(cells, cell), share });
  }
  return { distanceKm, stretches };
}

/** Adding 0 makes a 0 of -0. */
function meanGradePct({ km, pctKm }: StretchCells, cell: number): number {
  return Math.round((pctKm[cell]! / km[cell]!) * gradeDigits) / gradeDigits + 0;
}

function meanSpeedKmh({ km, hours }: StretchCells, cell: number): number | null {
  if (hours[cell] === 0) return null;
  return Math.round((km[cell]! / hours[cell]!) * speedDigits) / speedDigits;
}

/** Distance with a recorded speed, all pieces together, km. */
export function timedKm({ km, hours }: StretchCells): number {
  let sumKm = 0;
  for (let cell = 0; cell < km.length; cell += 1) if (hours[cell]! > 0) sumKm += km[cell]!;
  return sumKm;
}
