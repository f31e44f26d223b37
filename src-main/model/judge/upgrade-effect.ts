import type { ScoredRow } from '../../../shared-types/comparison.ts';
import type { BeforeAfter, PairedMargin, UpgradeEffect } from '../../../shared-types/upgrade.ts';

/** Scores closer than this are called close, as in the advice (our choice). */
const closeScore = 0.03;

/** What the effect of a change on a tour is judged by. */
export interface Judged {
  readonly margin: PairedMargin;
  readonly rows: BeforeAfter<ScoredRow>;
}

/** Whether the margins differ by more than luck: the interval of the difference holds no 0. */
export function isClear({ low, high }: Pick<PairedMargin, 'low' | 'high'>): boolean {
  return low > 0 || high < 0;
}

/** Whether a change turns a plan that fails into one that is carried, by more than luck. */
export function turnsToCarried({ margin }: Pick<Judged, 'margin'>): boolean {
  return isClear(margin) && margin.before < 0 && margin.after >= 0;
}

/** What a change does to a tour by the rider's own scorecard, and by whether the plan is carried. */
export function effectOf(judged: Judged): UpgradeEffect {
  const { margin, rows } = judged;
  if (isUnknown(judged)) return 'not-known';
  if (refusal(rows.after) > refusal(rows.before) || failsWithIt(judged)) return 'hurts';
  const gain = rows.after.score - rows.before.score;
  const better = turnsToCarried(judged) || refusal(rows.after) < refusal(rows.before) || gain >= closeScore;
  if (margin.after < 0 && (better || (isClear(margin) && margin.difference > 0))) return 'not-enough';
  if (better) return 'helps';
  return gain <= -closeScore ? 'hurts' : 'no-odds';
}

/** Whether a plan that is carried fails with the change, by more than luck. */
export function failsWithIt({ margin }: Pick<Judged, 'margin'>): boolean {
  return isClear(margin) && margin.before >= 0 && margin.after < 0;
}

function isUnknown({ margin, rows }: Judged): boolean {
  return Number.isNaN(margin.difference) || rows.before.notKnown.length + rows.after.notKnown.length > 0;
}

/** How the rider's own terms refuse a row: not, as unacceptable in something that counts, or by a limit. */
function refusal({ excludedBy, unacceptable }: ScoredRow): number {
  if (excludedBy.length > 0) return 2;
  return unacceptable.length > 0 ? 1 : 0;
}
