const dayMs = 86_400_000;

/** A calendar date has no hour: it is read, counted and shown in UTC, so that no time zone can shift it. */
function utc(isoDate: string): Date {
  return new Date(`${isoDate}T00:00:00Z`);
}

export function addDays(isoDate: string, days: number): string {
  const time = utc(isoDate).getTime();
  return Number.isNaN(time) ? isoDate : new Date(time + days * dayMs).toISOString().slice(0, 10);
}

function shown(isoDate: string, options: Intl.DateTimeFormatOptions, locale?: string): string {
  const date = utc(isoDate);
  if (Number.isNaN(date.getTime())) return isoDate;
  return new Intl.DateTimeFormat(locale, { ...options, timeZone: 'UTC' }).format(date);
}

/** `3 May` in the rider's own manner. */
export function dayMonth(isoDate: string, locale?: string): string {
  return shown(isoDate, { day: 'numeric', month: 'short' }, locale);
}

export function fullDate(isoDate: string, locale?: string): string {
  return shown(isoDate, { day: 'numeric', month: 'long', year: 'numeric' }, locale);
}

/** The date on the rider's own wall at this moment. */
export function todayFrom(now: Date): string {
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
