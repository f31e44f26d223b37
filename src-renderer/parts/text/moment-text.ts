import { wordsLocale } from '../../../shared-types/figures.ts';

const secondMs = 1000;
const minuteMs = 60 * secondMs;
const hourMs = 60 * minuteMs;
const dayMs = 24 * hourMs;

/** A moment on the rider's own clock, from ISO 8601: `3 May 2027, 14:05`. What is no moment stays as it is written. */
export function momentText(iso: string, locale?: string): string {
  const at = new Date(iso);
  if (Number.isNaN(at.getTime())) return iso;
  return new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short' }).format(at);
}

/** How long ago that was, in the largest unit that tells: `3 days ago`. */
export function ageText(iso: string, now: Date): string {
  const passedMs = Math.max(0, now.getTime() - new Date(iso).getTime());
  if (!(passedMs >= minuteMs)) return 'just now';
  const [unit, unitMs] =
    passedMs >= dayMs
      ? (['day', dayMs] as const)
      : passedMs >= hourMs
        ? (['hour', hourMs] as const)
        : (['minute', minuteMs] as const);
  return new Intl.RelativeTimeFormat(wordsLocale).format(-Math.floor(passedMs / unitMs), unit);
}
