import { z } from 'zod';
import { label, quantity, share } from './field.ts';
import { elevationM, latDeg, lonDeg } from './spot.ts';

/** A share of the distance ridden at one grade (rise over run, uphill positive). */
export interface GradeShare {
  readonly gradePct: number;
  readonly share: number;
}

/** Part of a piece of track at one grade; with the moving speed where the file has times, null where it has none. */
const trackStretch = z.strictObject({
  gradePct: quantity({ label: 'Grade', unit: '%', min: -40, max: 40 }),
  speedKmh: z.nullable(quantity({ label: 'Recorded speed', unit: 'km/h', min: 0.5, max: 120 })),
  share: share({ label: 'Share of distance' }),
});
export type TrackStretch = z.infer<typeof trackStretch>;

const distanceKm = (min: number) => quantity({ label: 'Distance', unit: 'km', min, max: 40_000 });

/** The track in pieces of equal length, in the order of the ride; the shares of a piece add up to 1. */
const trackPiece = z.strictObject({
  distanceKm: distanceKm(0),
  stretches: z.array(trackStretch).min(1).max(1200),
});
export type TrackPiece = z.infer<typeof trackPiece>;

/** The most pieces a track is kept in, and the most heights of its profile. */
export const mostTrackPieces = 40;
export const mostTrackHeights = 301;

/** What is kept of a GPX track: grades and speeds piece by piece and a profile, not its points. */
export const trackProfile = z.strictObject({
  name: label({ label: 'Track' }, 200),
  distanceKm: distanceKm(0.1),
  ascentM: quantity({ label: 'Ascent', unit: 'm', min: 0, max: 1_000_000 }),
  descentM: quantity({ label: 'Descent', unit: 'm', min: 0, max: 1_000_000 }),
  /** Over the distance; null when no point carries a height. */
  meanElevationM: z.nullable(elevationM),
  meanLatDeg: latDeg,
  meanLonDeg: lonDeg,
  /** Share of the points that carry a height; at 0 the slopes are not known. */
  heightShare: share({ label: 'Points with a height' }),
  /** Share of the distance with a recorded moving speed. */
  timedShare: share({ label: 'Distance with a recorded speed' }),
  /** Smoothed heights at equal distances from start to end; none when no point carries one. */
  heightsM: z.array(quantity({ label: 'Height', unit: 'm', min: -500, max: 9000 })).max(mostTrackHeights),
  pieces: z.array(trackPiece).min(1).max(mostTrackPieces),
});
export type TrackProfile = z.infer<typeof trackProfile>;
