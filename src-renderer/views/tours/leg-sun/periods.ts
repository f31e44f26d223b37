import { addDays, dayMonth } from '../../../../shared-types/dates.ts';
import type { SunBy, SunPeriod, SunUp } from '../../../../shared-types/leg-sun.ts';
import { monthName } from '../../../parts/text/month-name.ts';

/** The month of a date; 0 is January. */
function monthOf(isoDate: string): number {
  return Number(isoDate.slice(5, 7)) - 1;
}

/** The periods a leg is ridden in: all its days, or the months that any of its days falls in, as they come. */
export function riddenPeriods(
  periods: readonly SunPeriod[],
  by: SunBy,
  firstDate: string,
  days: number,
): readonly SunPeriod[] {
  if (by === 'day') return periods;
  const months = new Set(Array.from({ length: days }, (_, day) => monthOf(addDays(firstDate, day))));
  return [...months].flatMap((month) => periods.filter(({ date }) => monthOf(date) === month));
}

/** What stands under a bar: `3 May` or `May`. */
export function periodName(date: string, by: SunBy, locale?: string): string {
  return by === 'day' ? dayMonth(date, locale) : monthName(monthOf(date), 'short', locale);
}

/** The same inside a sentence: `on 3 May` or `in May`. */
export function periodPhrase(date: string, by: SunBy, locale?: string): string {
  return by === 'day' ? `on ${dayMonth(date, locale)}` : `in ${monthName(monthOf(date), 'long', locale)}`;
}

const minutesPerHour = 60;
const minutesPerDay = 1440;

/** Hours of a day as a clock shows them, `05:12`; past midnight the clock starts again. */
export function clockTime(hours: number): string {
  const minutes = Math.round(hours * minutesPerHour);
  const ofDay = ((minutes % minutesPerDay) + minutesPerDay) % minutesPerDay;
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${two(Math.floor(ofDay / minutesPerHour))}:${two(ofDay % minutesPerHour)}`;
}

/** Sunrise and sunset in words. */
export function sunUpText(sun: SunUp): string {
  if (sun.as === 'rises') return `${clockTime(sun.riseH)} to ${clockTime(sun.setH)}`;
  return sun.as === 'up' ? 'the sun stays up' : 'the sun stays down';
}
