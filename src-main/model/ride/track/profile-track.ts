import type { TrackPiece, TrackProfile } from '../../../../shared-types/track.ts';
import { climbOf } from './climb.ts';
import { cutPieces, pieceCount } from './cut-pieces.ts';
import { dropWavering } from './drop-wavering.ts';
import { heightProfile, meanHeightM } from './height-profile.ts';
import { meanPlace } from './mean-place.ts';
import { movingSpeeds } from './moving-speeds.ts';
import { nodeHeights, type TrackHeights } from './node-heights.ts';
import type { PointStore } from './point-store.ts';
import { rideAlong, type RiddenTrack } from './ridden-track.ts';
import { smoothHeights } from './smooth-heights.ts';
import { stretchesOf, timedKm } from './stretch-cells.ts';

/** A shorter track is a point. */
export const shortestTrackKm = 0.1;

/** Where fewer of the points carry a height, the slopes are not known. Common practice, no source. */
const leastHeightShare = 0.5;

/** Kept to 1e-6, so that all of the distance is 1 and none of it is 0 in spite of rounding. */
const shareDigits = 1e6;

/**
 * Boils the points of a track down to what riding needs: distance, climb and, piece by piece, the share of distance at each
 * grade and recorded speed. Without heights, or with too few, every grade is 0 and `heightShare` says so.
 *
 * @returns null when the segments together are shorter than `shortestTrackKm`
 */
export function profileTrack(name: string, points: PointStore): TrackProfile | null {
  const track = rideAlong(points);
  if (track.distanceKm < shortestTrackKm) return null;
  const heightShare = shareWithHeight(points);
  const heights = heightShare < leastHeightShare ? null : heightsOf(points, track);
  const cells = cutPieces(track, heights?.riddenM ?? null, movingSpeeds(points, track));
  const pieces: TrackPiece[] = [];
  for (let piece = 0; piece < pieceCount(track.distanceKm); piece += 1)
    pieces.push(stretchesOf(cells, piece));
  const { latDeg, lonDeg } = meanPlace(points, track);
  return {
    name,
    distanceKm: track.distanceKm,
    ...heightFigures(track, heights),
    meanLatDeg: latDeg,
    meanLonDeg: lonDeg,
    heightShare: heights === null ? 0 : heightShare,
    timedShare: Math.round((timedKm(cells) / track.distanceKm) * shareDigits) / shareDigits,
    pieces,
  };
}

function shareWithHeight({ count, elevationM }: PointStore): number {
  let without = 0;
  for (let index = 0; index < count; index += 1) if (Number.isNaN(elevationM[index])) without += 1;
  return 1 - without / count;
}

/** The heights as they are ridden: without what of them is noise. */
function heightsOf(points: PointStore, track: RiddenTrack): TrackHeights | null {
  const heights = nodeHeights(points, track);
  return heights && { ...heights, riddenM: dropWavering(smoothHeights(heights.riddenM, track.stepKm)) };
}

function heightFigures(
  track: RiddenTrack,
  heights: TrackHeights | null,
): Pick<TrackProfile, 'ascentM' | 'descentM' | 'meanElevationM' | 'heightsM'> {
  if (heights === null) return { ascentM: 0, descentM: 0, meanElevationM: null, heightsM: [] };
  return {
    ...climbOf(heights.riddenM),
    meanElevationM: meanHeightM(track, heights),
    heightsM: heightProfile(track, heights),
  };
}
