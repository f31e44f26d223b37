import { formatNumber, withUnit } from '../../../../shared-types/figures.ts';
import type { SpeedShare } from '../../../../shared-types/leg-ride.ts';

export function bandWidthKmh([first]: readonly SpeedShare[]): number {
  return first === undefined ? 1 : first.toKmh - first.fromKmh;
}

export function bandMiddlesKmh(speeds: readonly SpeedShare[]): readonly number[] {
  return speeds.map(({ fromKmh }) => fromKmh + bandWidthKmh(speeds) / 2);
}

/** Speeds as a phrase: `at 10 to 25 km/h`, `below 15 km/h`. */
export function speedPhrase(fromKmh: number, toKmh: number, locale?: string): string {
  const to = withUnit(toKmh, 'km/h', { locale });
  return fromKmh <= 0 ? `below ${to}` : `at ${formatNumber(fromKmh, { locale })} to ${to}`;
}
