import { formatNumber, percent, withUnit, wordsLocale } from '../../../shared-types/figures.ts';
import { greatCircleKm } from '../../../shared-types/great-circle.ts';
import { trackNotes } from '../../../shared-types/track-notes.ts';
import type { Leg } from '../../../shared-types/tour.ts';
import type { SettledPlace } from './place.ts';

/** A track whose middle lies farther than this from the place of its leg has its sun and air from elsewhere. */
const farTrackKm = 100;

/** What to know of a leg's track before trusting what is said of its ride. */
export function rideNotes({ terrain }: Leg, { climate, lonDeg }: SettledPlace): readonly string[] {
  if (terrain.as === 'class') return [];
  const { track } = terrain;
  const middle = { latDeg: track.meanLatDeg, lonDeg: track.meanLonDeg };
  const km = greatCircleKm(middle, { latDeg: climate.latDeg, lonDeg });
  // Speeds that are not taken need not be there.
  const missing = trackNotes(terrain.pace === 'computed' ? { ...track, timedShare: 1 } : track);
  return [...missing, ...(km > farTrackKm ? [farText(km)] : [])];
}

function farText(km: number): string {
  const away = withUnit(km, 'km', { locale: wordsLocale });
  return `The middle of the track lies ${away} from the place of this leg: its sun and air are of that place.`;
}

/** More or less riding than planned by this share is told of. */
const hoursOffFrom = 0.1;

/** Whether the track fits the riding hours planned for it. */
export function hoursNotes({ terrain, days, ridingHours }: Leg, speedKmh: number): readonly string[] {
  if (terrain.as === 'class' || ridingHours === 0) return [];
  const planned = days * ridingHours;
  const needed = terrain.track.distanceKm / speedKmh;
  if (Math.abs(needed / planned - 1) <= hoursOffFrom) return [];
  const hours = (value: number): string => formatNumber(value, { digits: 1, locale: wordsLocale });
  const share = percent(needed / planned - 1, { signed: true, locale: wordsLocale });
  return [
    `The track takes ${hours(needed)} h of riding, ${hours(needed / days)} h a day; the leg has ${hours(planned)} h (${share}). Its days are taken as parts of the track of equal riding time.`,
  ];
}
