import type { NumberStyle } from '../../../shared-types/figures.ts';
import type { StationSeen } from '../../../shared-types/station-notes.ts';
import { display } from '../../state/display.svelte.ts';

/** A climate station as seen from a leg, with its country. */
export interface SeenStation extends StationSeen {
  readonly country: string;
}

type Locale = NumberStyle['locale'];

/** `Yerevan, Armenia, 12 km away, 212 m higher than the leg`; what rounds to nothing is left out. */
export function stationText({ place, country, km, higherM }: SeenStation, locale?: Locale): string {
  return [place, country, ...distanceTexts(km, higherM, ' than the leg', locale)].join(', ');
}

/** `12 km away, 212 m higher`, for a column that names the station itself; empty at the station. */
export function distanceText(km: number, higherM: number, locale?: Locale): string {
  return distanceTexts(km, higherM, '', locale).join(', ');
}

function distanceTexts(km: number, higherM: number, than: string, locale: Locale): readonly string[] {
  const away = Math.round(km) === 0 ? [] : [`${display.distance(km, { locale })} away`];
  return hasDifference(higherM) ? [...away, `${heightText(higherM, locale)}${than}`] : away;
}

function heightText(higherM: number, locale: Locale): string {
  return `${display.height(Math.abs(higherM), { locale })} ${higherM > 0 ? 'higher' : 'lower'}`;
}

/** Whether there is a difference in height to speak of, and it is known. */
function hasDifference(higherM: number): boolean {
  return Number.isFinite(higherM) && Math.round(higherM) !== 0;
}
