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

/** Shares kept to so many digits are off by less together. */
const sharesWithin = 1e-3;
const sharesAllowed = 'more than 0 km, in shares that add up to 1';

/** The track in pieces of equal length, in the order of the ride. */
const trackPiece = z
  .strictObject({
    distanceKm: distanceKm(0),
    stretches: z.array(trackStretch).min(1).max(1200),
  })
  .refine((piece) => piece.distanceKm > 0 && Math.abs(sumOf(piece.stretches, 'share') - 1) <= sharesWithin, {
    error: sharesAllowed,
  });
export type TrackPiece = z.infer<typeof trackPiece>;

/** The most pieces a track is kept in, and the most heights of its profile. */
export const mostTrackPieces = 40;
export const mostTrackHeights = 301;

/** Heights of roads, m: what lies outside is an error of the receiver. */
export const lowestRoadM = -500;
export const highestRoadM = 9000;

/** The pieces together are as long as the track, but for this share of it. */
const lengthWithin = 0.01;

/** What is kept of a GPX track: grades and speeds piece by piece and a profile, not its points. */
export const trackProfile = z
  .strictObject({
    name: label({ label: 'Track' }, 200),
    distanceKm: distanceKm(0.1),
    ascentM: quantity({ label: 'Ascent', unit: 'm', min: 0, max: 1_000_000 }),
    descentM: quantity({ label: 'Descent', unit: 'm', min: 0, max: 1_000_000 }),
    /** Over the distance; null when too few points carry a height. */
    meanElevationM: z.nullable(elevationM),
    meanLatDeg: latDeg,
    meanLonDeg: lonDeg,
    /** Share of the points that carry a height; 0, too, where they are too few to know the slopes. */
    heightShare: share({ label: 'Points with a height' }),
    /** Share of the distance with a recorded moving speed. */
    timedShare: share({ label: 'Distance with a recorded speed' }),
    /** Smoothed heights at equal distances from start to end; none when the slopes are not known. */
    heightsM: z
      .array(quantity({ label: 'Height', unit: 'm', min: lowestRoadM, max: highestRoadM }))
      .max(mostTrackHeights),
    pieces: z.array(trackPiece).min(1).max(mostTrackPieces),
  })
  .refine(
    (track) =>
      Math.abs(sumOf(track.pieces, 'distanceKm') - track.distanceKm) <= lengthWithin * track.distanceKm,
    { error: 'pieces that together are as long as the track', path: ['pieces'] },
  );
export type TrackProfile = z.infer<typeof trackProfile>;

function sumOf<Key extends string>(parts: readonly Readonly<Record<Key, number>>[], key: Key): number {
  return parts.reduce((sum, part) => sum + part[key], 0);
}
