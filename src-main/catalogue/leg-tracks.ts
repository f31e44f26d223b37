import type { GradeShare, TrackProfile } from '../../shared-types/tour.ts';
import type { ReadDb, WriteDb } from './connection.ts';
import { insertRow, selectAll, selectOne } from './statements.ts';

export function writeTrack(write: WriteDb, tourId: string, leg: number, track: TrackProfile): void {
  insertRow(write, 'leg_tracks', {
    tour_id: tourId,
    leg_position: leg,
    name: track.name,
    distance_km: track.distanceKm,
    ascent_m: track.ascentM,
    descent_m: track.descentM,
    mean_elevation_m: track.meanElevationM,
    mean_lat_deg: track.meanLatDeg,
    mean_lon_deg: track.meanLonDeg,
  });
  track.grades.forEach((grade, position) =>
    insertRow(write, 'leg_grades', {
      tour_id: tourId,
      leg_position: leg,
      position,
      grade_pct: grade.gradePct,
      distance_share: grade.share,
    }),
  );
}

/** The track of a leg, or null for a leg that has a terrain class only. */
export function readTrack(read: ReadDb, tourId: string, leg: number): TrackProfile | null {
  const track = selectOne(
    read,
    'SELECT name, distance_km AS distanceKm, ascent_m AS ascentM, descent_m AS descentM,' +
      ' mean_elevation_m AS meanElevationM, mean_lat_deg AS meanLatDeg, mean_lon_deg AS meanLonDeg' +
      ' FROM leg_tracks WHERE tour_id = ? AND leg_position = ?',
    tourId,
    leg,
  ) as Omit<TrackProfile, 'grades'> | undefined;
  return track === undefined ? null : { ...track, grades: readGrades(read, tourId, leg) };
}

function readGrades(read: ReadDb, tourId: string, leg: number): GradeShare[] {
  return selectAll(
    read,
    'SELECT grade_pct AS gradePct, distance_share AS share FROM leg_grades' +
      ' WHERE tour_id = ? AND leg_position = ? ORDER BY position',
    tourId,
    leg,
  ) as GradeShare[];
}
