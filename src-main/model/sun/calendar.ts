/** Milliseconds in one day. */
export const msPerDay = 86_400_000;

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
  return dayOfYear(Date.UTC(2023, month, 15, 12));
}

/** `YYYY-MM-DD` of an instant, UTC. */
export function isoDateOf(noonMs: number): string {
  return new Date(noonMs).toISOString().slice(0, 10);
}
