/** Milliseconds in one day. */
export const msPerDay = 86_400_000;
/** Months are reckoned in a year without 29 February. */
const commonYear = 2023;

/** Mid-day instant (UTC) of a calendar date `YYYY-MM-DD`, plus whole days; ms since 1970. */
export function noonOf(isoDate: string, plusDays = 0): number {
  return Date.parse(`${isoDate}T12:00:00Z`) + plusDays * msPerDay;
}

/** Day number J of the year: 1 on 1 January, 366 on 31 December of a leap year. */
export function dayOfYear(noonMs: number): number {
  const year = new Date(noonMs).getUTCFullYear();
  return Math.floor((noonMs - Date.UTC(year, 0, 1)) / msPerDay) + 1;
}

/** Month index, 0 is January. */
export function monthOf(noonMs: number): number {
  return new Date(noonMs).getUTCMonth();
}

/** Day number of the 15th of a month (0 is January) in a common year: the day FAO-56 takes for a monthly mean. */
export function midMonthDay(month: number): number {
  return dayOfYear(Date.UTC(commonYear, month, 15, 12));
}

/** `YYYY-MM-DD` of an instant, UTC. */
export function isoDateOf(noonMs: number): string {
  return new Date(noonMs).toISOString().slice(0, 10);
}

/** Noon of every day of a month (0 is January) in a common year. */
export function noonsOfMonth(month: number): readonly number[] {
  const [first, next] = [Date.UTC(commonYear, month, 1, 12), Date.UTC(commonYear, month + 1, 1, 12)];
  return Array.from({ length: (next - first) / msPerDay }, (_, day) => first + day * msPerDay);
}

/** Noon of the 15th of the twelve months of the year that an instant lies in, January first. */
export function middlesOfMonths(noonMs: number): readonly number[] {
  const year = new Date(noonMs).getUTCFullYear();
  return Array.from({ length: 12 }, (_, month) => Date.UTC(year, month, 15, 12));
}
