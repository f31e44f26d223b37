import { z } from 'zod';
import { trackProfile, type TrackPiece, type TrackStretch } from '../../shared-types/track.ts';
import type { ReadDb, WriteDb } from './connection.ts';
import { insertRow, selectAll } from './statements.ts';
import { storedJson } from './stored-json.ts';

const { gradePct, speedKmh, share } = trackProfile.shape.pieces.element.shape.stretches.element.shape;

/** A stretch without the names of its figures, which would take most of the room. */
const storedStretches = z.array(z.tuple([gradePct, speedKmh, share]));

export function writePieces(
  write: WriteDb,
  tourId: string,
  leg: number,
  pieces: readonly TrackPiece[],
): void {
  pieces.forEach((piece, position) =>
    insertRow(write, 'leg_track_pieces', {
      tour_id: tourId,
      leg_position: leg,
      position,
      distance_km: piece.distanceKm,
      stretches: JSON.stringify(piece.stretches.map(tupleOf)),
    }),
  );
}

export function readPieces(read: ReadDb, tourId: string, leg: number): TrackPiece[] {
  const rows = selectAll(
    read,
    'SELECT distance_km, stretches FROM leg_track_pieces' +
      ' WHERE tour_id = ? AND leg_position = ? ORDER BY position',
    tourId,
    leg,
  ) as { distance_km: number; stretches: string }[];
  // No constraint can count rows, and a track without any has no distance to ride.
  if (rows.length === 0)
    throw new Error(`The catalogue has a track without pieces for leg ${leg} of tour ${tourId}.`);
  const what = `stretches of leg ${leg} of tour ${tourId}`;
  return rows.map((row) => ({
    distanceKm: row.distance_km,
    stretches: storedJson(storedStretches, row.stretches, what).map(stretchOf),
  }));
}

type StoredStretch = z.output<typeof storedStretches>[number];

function tupleOf(stretch: TrackStretch): StoredStretch {
  return [stretch.gradePct, stretch.speedKmh, stretch.share];
}

function stretchOf(stored: StoredStretch): TrackStretch {
  return { gradePct: stored[0], speedKmh: stored[1], share: stored[2] };
}
