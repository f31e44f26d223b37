import { formatNumber, wordsLocale } from '../../../shared-types/figures.ts';
import type { AdvisedScenario, Situation, Standing } from './advised.ts';

/** How long the first two last between walls, where they differ. */
export function reachOf(standings: readonly Standing[], situation: Situation): string[] {
  const [best, second] = standings.map(({ scenario }) => scenario);
  if (best === undefined || second === undefined) return [];
  if (best.daysWithoutWall === second.daysWithoutWall) return [];
  const parts = [best, second].map((each) => reach(each, situation));
  return parts.includes(null) ? [] : [`${parts.join('; ')}.`];
}

function reach({ label, daysWithoutWall }: AdvisedScenario, { tour }: Situation): string | null {
  if (Number.isNaN(daysWithoutWall)) return null;
  if (daysWithoutWall >= tour.days) return `${label} needs no night with a wall on the way`;
  if (daysWithoutWall < 1) return `${label} would not do with a wall every night`;
  return `${label} needs a night with a wall at least every ${daysText(daysWithoutWall)}`;
}

/** `5 days`; after "every", one is a `day`. */
export function daysText(days: number): string {
  return days === 1 ? 'day' : `${formatNumber(days, { locale: wordsLocale })} days`;
}
