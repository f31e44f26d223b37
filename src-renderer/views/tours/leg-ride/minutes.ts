import { withUnit } from '../../../../shared-types/figures.ts';

/** Below this the model can't tell a difference, min. */
const leastMinutes = 0.05;
const wholeMinutesFrom = 10;

/** Below 10 minutes a tenth is told, above it whole minutes. */
export function minutesText(minutes: number, locale?: string): string {
  return withUnit(minutes, 'min', { digits: Math.abs(minutes) < wholeMinutesFrom ? 1 : 0, locale });
}

interface Cost {
  readonly minutes: number;
  /** As its subject asks for it. */
  readonly verb: 'cost' | 'costs';
  /** What follows a figure: `a day`, `more`, or nothing. */
  readonly after: string;
}

/** What something does to the time of a day: `costs 3.1 min a day`, or, on a leg that mostly falls, `saves` it. */
export function timeCost({ minutes, verb, after }: Cost, locale?: string): string {
  if (Math.abs(minutes) < leastMinutes) return `${verb} no time`;
  const does = minutes < 0 ? verb.replace('cost', 'save') : verb;
  return `${does} ${minutesText(Math.abs(minutes), locale)} ${after}`.trimEnd();
}
