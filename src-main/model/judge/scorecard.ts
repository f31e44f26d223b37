import type { CriterionValues, ScoredRow } from '../../../shared-types/comparison.ts';
import {
  criteria,
  criterionNames,
  type CriterionScale,
  type Preferences,
} from '../../../shared-types/settings.ts';

/** A scenario as the scorecard sees it. */
export interface ScoreInput {
  readonly id: string;
  readonly values: CriterionValues;
}

/** Differences in score below this are rounding, and share a rank. */
const sameScore = 1e-9;

/**
 * Turns a value to 0..1 on the rider's own scale: 1 at "fully satisfied" or better, 0 at "unacceptable" or worse, straight
 * between. It looks at no other scenario, so adding one never reorders the rest. A value that is no number scores 0.
 */
export function part(value: number, scale: CriterionScale): number {
  const share = (value - scale.unacceptable) / (scale.satisfied - scale.unacceptable);
  return Number.isFinite(share) ? Math.min(1, Math.max(0, share)) : 0;
}

/** Simple additive weighting: the weighted mean of the parts, 0..1. Weights need not add up to 1; all zero scores 0. */
export function weightedScore(parts: CriterionValues, preferences: Preferences): number {
  const weights = criterionNames.reduce((sum, name) => sum + preferences[name].weight, 0);
  if (weights === 0) return 0;
  return criterionNames.reduce((sum, name) => sum + preferences[name].weight * parts[name], 0) / weights;
}

/** Whether `a` is at least as good as `b` in every criterion and better in one. */
export function dominates(a: CriterionValues, b: CriterionValues): boolean {
  const gain = criterionNames.map((name) =>
    criteria[name].better === 'lower' ? b[name] - a[name] : a[name] - b[name],
  );
  return gain.every((each) => each >= 0) && gain.some((each) => each > 0);
}

/** Scores and ranks scenarios, best first; equal scores share a rank and keep the order of their ids. */
export function scorecard(rows: readonly ScoreInput[], preferences: Preferences): readonly ScoredRow[] {
  const scored = rows
    .map(({ id, values }) => {
      const parts = Object.fromEntries(
        criterionNames.map((name) => [name, part(values[name], preferences[name])]),
      ) as Record<(typeof criterionNames)[number], number>;
      return { id, values, parts, score: weightedScore(parts, preferences) };
    })
    .sort((a, b) => (Math.abs(b.score - a.score) > sameScore ? b.score - a.score : a.id < b.id ? -1 : 1));
  return scored.map(({ id, parts, score, values }) => ({
    id,
    parts,
    score,
    rank: 1 + scored.filter((other) => other.score > score + sameScore).length,
    dominatedBy: scored.find((other) => dominates(other.values, values))?.id ?? null,
  }));
}
