import type { TrackPiece, TrackProfile } from '../../shared-types/track.ts';

/** Heights of the invented plateau at equal distances, m. */
const heightsM = [
  990, 1080, 1240, 1190, 1060, 980, 1110, 1350, 1620, 1480, 1270, 1180, 1210, 1330, 1290, 1160, 1040, 1020,
  1050, 1010, 960, 900, 870, 910, 860, 820, 790, 760,
];
const stretchKm = 38;

/** How the road rolls about its mean slope: steps in %, and the share of the distance on each. They cancel out. */
const rolls = [
  { stepPct: -4, share: 0.08 },
  { stepPct: -2, share: 0.17 },
  { stepPct: 0, share: 0.5 },
  { stepPct: 2, share: 0.17 },
  { stepPct: 4, share: 0.08 },
];

const pieces: TrackPiece[] = heightsM.slice(1).map((toM, index) => {
  const meanPct = Math.round((toM - heightsM[index]!) / (stretchKm * 10));
  return {
    distanceKm: stretchKm,
    stretches: rolls.map(({ stepPct, share }) => ({ gradePct: meanPct + stepPct, speedKmh: null, share })),
  };
});

/** Rise at 1 % over 1 km. */
const mPerKmPct = 10;

function climbM(sign: 1 | -1): number {
  const rises = pieces.flatMap(({ distanceKm, stretches }) =>
    stretches.map(({ gradePct, share }) => Math.max(0, sign * gradePct) * share * distanceKm * mPerKmPct),
  );
  return Math.round(rises.reduce((sum, rise) => sum + rise, 0));
}

/** An invented track over an invented plateau: nobody rode it. */
export const demoTrack: TrackProfile = {
  name: 'invented-plateau.gpx',
  distanceKm: pieces.length * stretchKm,
  ascentM: climbM(1),
  descentM: climbM(-1),
  meanElevationM: Math.round(heightsM.reduce((sum, height) => sum + height, 0) / heightsM.length),
  meanLatDeg: 40.3,
  meanLonDeg: 44.9,
  heightShare: 1,
  timedShare: 0,
  heightsM,
  pieces,
};
