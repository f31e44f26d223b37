export const monthsAYear = 12;

/** Any year: only the month of the date is shown. */
const anyYear = 2001;

/** The name of a month in the rider's own manner; 0 is January. */
export function monthName(month: number, style: 'short' | 'long', locale?: string): string {
  return new Intl.DateTimeFormat(locale, { month: style, timeZone: 'UTC' }).format(Date.UTC(anyYear, month));
}
