import type { TrackProfile, TrackStretch } from '../../shared-types/track.ts';

const pieceKm = 50;

/** An invented track near the invented station: a level piece, partly with recorded speeds, then a climb. */
export function trackFixture(changes: Partial<TrackProfile> = {}): TrackProfile {
  const pieces: readonly (readonly TrackStretch[])[] = [
    [
      { gradePct: 0, speedKmh: 17.5, share: 0.75 },
      { gradePct: -1, speedKmh: null, share: 0.25 },
    ],
    [{ gradePct: 6, speedKmh: null, share: 1 }],
  ];
  return { ...trackOf(pieces), ...changes };
}

/** An invented track of these pieces, each of the same length. */
export function trackOf(pieces: readonly (readonly TrackStretch[])[]): TrackProfile {
  const timed = pieces.flat().filter(({ speedKmh }) => speedKmh !== null);
  return {
    name: 'invented.gpx',
    distanceKm: pieces.length * pieceKm,
    ascentM: 800,
    descentM: 300,
    meanElevationM: 400,
    meanLatDeg: 45,
    meanLonDeg: 10,
    heightShare: 1,
    timedShare: timed.reduce((sum, { share }) => sum + share, 0) / pieces.length,
    heightsM: [200, 400, 700],
    pieces: pieces.map((stretches) => ({ distanceKm: pieceKm, stretches: [...stretches] })),
  };
}
