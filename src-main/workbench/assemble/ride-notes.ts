import { withUnit, wordsLocale } from '../../../shared-types/figures.ts';
import { greatCircleKm } from '../../../shared-types/great-circle.ts';
import { trackNotes } from '../../../shared-types/track-notes.ts';
import type { Leg, Tour } from '../../../shared-types/tour.ts';
import type { RiddenCourse } from '../../model/ride/ride-course.ts';
import type { SettledPlace } from './place.ts';
import { inPercent } from './words.ts';

/** A track whose middle lies farther than this from the place of its leg has its sun and air from elsewhere. */
const farTrackKm = 100;

/** What to know of a leg's track before trusting what is said of its ride. */
export function rideNotes({ terrain }: Leg, { climate, lonDeg }: SettledPlace): readonly string[] {
  if (terrain.as === 'class') return [];
  const { track } = terrain;
  const middle = { latDeg: track.meanLatDeg, lonDeg: track.meanLonDeg };
  const km = greatCircleKm(middle, { latDeg: climate.latDeg, lonDeg });
  // Speeds that are not taken need not be there.
  const missing = trackNotes(terrain.pace === 'computed' ? { ...track, timedShare: 1 } : track, terrain.pace);
  return [...missing, ...(km > farTrackKm ? [farText(km)] : [])];
}

function farText(km: number): string {
  const away = withUnit(km, 'km', { locale: wordsLocale });
  return `The middle of the track lies ${away} from the place of this leg: its sun and air are of that place.`;
}

/** What to know of a leg once it is ridden. */
export function riddenNotes(
  leg: Leg,
  { riderW }: Pick<Tour, 'riderW'>,
  ridden: RiddenCourse,
): readonly string[] {
  const { speedKmh } = ridden.on ?? ridden.loaded;
  return [...hoursNotes(leg, speedKmh), ...recordedNotes(leg, riderW, ridden.power.riderW)];
}

/** More or less riding than planned by this share is told of. */
const hoursOffFrom = 0.1;

/** Whether the track fits the riding hours planned for it. */
function hoursNotes({ terrain, days, ridingHours }: Leg, speedKmh: number): readonly string[] {
  if (terrain.as === 'class' || ridingHours === 0) return [];
  const planned = days * ridingHours;
  const needed = terrain.track.distanceKm / speedKmh;
  const off = needed / planned - 1;
  if (Math.abs(off) <= hoursOffFrom) return [];
  const than = `${inPercent(Math.abs(off))} ${off > 0 ? 'more' : 'less'} than the ${timeText(planned)} of the leg`;
  return [
    `The track takes ${timeText(needed)} of riding, ${than}. Its days are taken as parts of the track of equal riding time.`,
  ];
}

function timeText(hours: number): string {
  const locale = wordsLocale;
  return hours < 1 ? withUnit(hours * 60, 'min', { locale }) : withUnit(hours, 'h', { digits: 1, locale });
}

/** Recorded speeds that take this much of the rider's own power were hardly ridden by them. */
const unlikelyShare = 1.75;

/** Whether recorded speeds can be the rider's, and what of the leg does not touch them. */
function recordedNotes({ terrain, wind }: Leg, riderW: number, takenW: number): readonly string[] {
  if (terrain.as === 'class' || terrain.pace === 'computed' || terrain.track.timedShare === 0) return [];
  const watts = (value: number): string => withUnit(value, 'W', { locale: wordsLocale });
  return [
    ...(takenW > unlikelyShare * riderW
      ? [
          `At its recorded speeds the track takes ${watts(takenW)} in the mean, you ride at ${watts(riderW)}: is it yours, and by bicycle?`,
        ]
      : []),
    ...(wind.as === 'calm'
      ? []
      : [
          'Recorded speeds have their wind in them: the wind of this leg counts only where none is recorded.',
        ]),
  ];
}
