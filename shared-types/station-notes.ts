import { farStationKm, otherHeightM } from './climate.ts';
import { withUnit, wordsLocale } from './figures.ts';

/** A climate station as seen from a leg. */
export interface StationSeen {
  readonly place: string;
  readonly km: number;
  /** Height of the station less that of the leg, m; no number while the leg's height is none. */
  readonly higherM: number;
}

/** What to know of a station so far away, or so much higher or lower, that it says little of the leg. */
export function stationNotes({ place, km, higherM }: StationSeen): readonly string[] {
  return [
    ...(km > farStationKm ? [farSentence(place, km)] : []),
    ...(Math.abs(higherM) > otherHeightM ? [heightSentence(place, higherM)] : []),
  ];
}

function farSentence(station: string, km: number): string {
  const away = withUnit(km, 'km', { locale: wordsLocale });
  return `The nearest climate station, ${station}, is ${away} away: the sky there may differ.`;
}

function heightSentence(station: string, higherM: number): string {
  return `${station} lies ${heightText(higherM, wordsLocale)} than the leg: the sky there may differ.`;
}

/** `212 m higher` or `212 m lower`. */
function heightText(higherM: number, locale?: string): string {
  return `${withUnit(Math.abs(higherM), 'm', { locale })} ${higherM > 0 ? 'higher' : 'lower'}`;
}
