import type { SpeedShare } from '../../../../shared-types/leg-ride.ts';
import { display } from '../../../state/display.svelte.ts';

export function bandWidthKmh([first]: readonly SpeedShare[]): number {
  return first === undefined ? 1 : first.toKmh - first.fromKmh;
}

export function bandMiddlesKmh(speeds: readonly SpeedShare[]): readonly number[] {
  return speeds.map(({ fromKmh }) => fromKmh + bandWidthKmh(speeds) / 2);
}

/** Speeds as a phrase: `at 10 to 25 km/h`, `below 15 km/h`. */
export function speedPhrase(fromKmh: number, toKmh: number, locale?: string): string {
  const to = display.speed(toKmh, { locale });
  return fromKmh <= 0 ? `below ${to}` : `at ${display.figure(fromKmh, 'km/h', { locale })} to ${to}`;
}
