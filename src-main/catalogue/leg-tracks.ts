import type { Leg, TrackPace } from '../../shared-types/tour.ts';
import { trackProfile, type TrackProfile } from '../../shared-types/track.ts';
import type { ReadDb, WriteDb } from './connection.ts';
import { readPieces, writePieces } from './leg-track-pieces.ts';
import { insertRow, selectOne } from './statements.ts';
import { storedJson } from './stored-json.ts';

/** The track of a leg, and the speed at which it is ridden. */
export type RiddenTrack = Omit<Extract<Leg['terrain'], { as: 'track' }>, 'as' | 'terrainClass'>;

interface TrackRow {
  readonly pace: TrackPace;
  readonly name: string;
  readonly distance_km: number;
  readonly ascent_m: number;
  readonly descent_m: number;
  readonly mean_elevation_m: number | null;
  readonly mean_lat_deg: number;
  readonly mean_lon_deg: number;
  readonly height_share: number;
  readonly timed_share: number;
  /** JSON: a list of metres. */
  readonly heights: string;
}

export function writeTrack(write: WriteDb, tourId: string, leg: number, ridden: RiddenTrack): void {
  insertRow(write, 'leg_tracks', { tour_id: tourId, leg_position: leg, ...rowOf(ridden) });
  writePieces(write, tourId, leg, ridden.track.pieces);
}

/** null for a leg that has a terrain class only. */
export function readTrack(read: ReadDb, tourId: string, leg: number): RiddenTrack | null {
  const row = selectOne(
    read,
    'SELECT * FROM leg_tracks WHERE tour_id = ? AND leg_position = ?',
    tourId,
    leg,
  ) as TrackRow | undefined;
  if (row === undefined) return null;
  const what = `heights of leg ${leg} of tour ${tourId}`;
  const heightsM = storedJson(trackProfile.shape.heightsM, row.heights, what);
  return { pace: row.pace, track: trackOf(row, heightsM, readPieces(read, tourId, leg)) };
}

function rowOf({ pace, track }: RiddenTrack): TrackRow {
  return {
    pace,
    name: track.name,
    distance_km: track.distanceKm,
    ascent_m: track.ascentM,
    descent_m: track.descentM,
    mean_elevation_m: track.meanElevationM,
    mean_lat_deg: track.meanLatDeg,
    mean_lon_deg: track.meanLonDeg,
    height_share: track.heightShare,
    timed_share: track.timedShare,
    heights: JSON.stringify(track.heightsM),
  };
}

function trackOf(row: TrackRow, heightsM: number[], pieces: TrackProfile['pieces']): TrackProfile {
  return {
    name: row.name,
    distanceKm: row.distance_km,
    ascentM: row.ascent_m,
    descentM: row.descent_m,
    meanElevationM: row.mean_elevation_m,
    meanLatDeg: row.mean_lat_deg,
    meanLonDeg: row.mean_lon_deg,
    heightShare: row.height_share,
    timedShare: row.timed_share,
    heightsM,
    pieces,
  };
}
