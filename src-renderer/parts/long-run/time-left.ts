import { formatNumber } from '../../../shared-types/figures.ts';

const secondsPerMinute = 60;
/** Beyond this, minutes say enough. */
const longestInSeconds = 90;
/** A run that slows down towards its end never promises nothing left. */
const leastSeconds = 1;

/** `, about 4 s left`; nothing while it is not known. */
export function timeLeftText(secondsLeft: number | null, locale?: string): string {
  if (secondsLeft === null) return '';
  const inSeconds = secondsLeft <= longestInSeconds;
  const figure = Math.max(leastSeconds, inSeconds ? secondsLeft : secondsLeft / secondsPerMinute);
  return `, about ${formatNumber(figure, { locale })}\u00a0${inSeconds ? 's' : 'min'} left`;
}
