import { formatNumber } from '../../../shared-types/figures.ts';
import type { Lasting, OnTour, SwitchOff } from '../../../shared-types/field-log.ts';

const oneDay = 1;

export function daysText(days: number, locale?: string): string {
  const figure = formatNumber(days, { digits: 1, locale });
  return `${figure} ${figure === formatNumber(oneDay, { locale }) ? 'day' : 'days'}`;
}

export function lastingText({ days, toTheEnd }: Lasting, locale?: string): string {
  return toTheEnd ? `to the end of the tour (${daysText(days, locale)})` : daysText(days, locale);
}

/** Whether what is stored reaches the wall, in a sentence. */
export function onTourFinding(answer: OnTour, locale?: string): string {
  const { low, usual, wall } = answer;
  const lasts = `Must-haves last ${lastingText(usual, locale)}`;
  if (wall === null) return `${lasts}; the tour has no wall any more`;
  const next = `the next wall is in ${daysText(wall.inDays, locale)}, on day ${formatNumber(wall.day, { locale })}`;
  if (reaches(low, wall.inDays)) return `${lasts}: enough, ${next}`;
  return reaches(usual, wall.inDays) ? `${lasts}: just enough, ${next}` : `${lasts}: too short, ${next}`;
}

function reaches({ days, toTheEnd }: Lasting, neededDays: number): boolean {
  return toTheEnd || days >= neededDays;
}

/** What to switch off first, a sentence for each. */
export function switchOffWords({ switchOff, usual }: OnTour, locale?: string): readonly string[] {
  if (usual.toTheEnd) return ['Nothing needs to be switched off.'];
  if (switchOff.length === 0) return ['Switching off a single device buys no tenth of a day.'];
  return switchOff.map((off, place) => {
    const start = place === 0 ? 'Switch off first' : 'Then';
    return `${start}: ${off.label} (${off.role === 'must-have' ? 'must-have' : 'nice-to-have'}), which alone buys ${gainText(off, locale)}.`;
  });
}

function gainText({ days, toTheEnd }: SwitchOff, locale?: string): string {
  return toTheEnd ? `at least ${daysText(days, locale)}, to the end of the tour` : daysText(days, locale);
}
