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

/** Whether a value lies beyond what the rider accepts; the limit itself is still accepted. */
export function isUnacceptable(value: number, scale: CriterionScale): boolean {
  return scale.satisfied < scale.unacceptable ? value > scale.unacceptable : value < scale.unacceptable;
}

/** Whether `a` is at least as good as `b` in every criterion and better in one. */
export function dominates(a: CriterionValues, b: CriterionValues): boolean {
  const gain = criterionNames.map((name) =>
    criteria[name].better === 'lower' ? b[name] - a[name] : a[name] - b[name],
  );
  return gain.every((each) => each >= 0) && gain.some((each) => each > 0);
}

/**
 * Scores and ranks scenarios, best first; equal scores share a rank and keep the order of their ids. A scenario with a value
 * the rider called unacceptable never outranks one without, whatever else it saves.
 */
export function scorecard(rows: readonly ScoreInput[], preferences: Preferences): readonly ScoredRow[] {
  const scored = rows
    .map(({ id, values }) => {
      const parts = Object.fromEntries(
        criterionNames.map((name) => [name, part(values[name], preferences[name])]),
      ) as Record<(typeof criterionNames)[number], number>;
      const unacceptable = criterionNames.filter((name) => isUnacceptable(values[name], preferences[name]));
      return { id, values, parts, unacceptable, score: weightedScore(parts, preferences) };
    })
    .sort((a, b) => lead(b, a) || (a.id < b.id ? -1 : 1));
  return scored.map(({ values, ...row }) => ({
    ...row,
    rank: 1 + scored.filter((other) => lead(other, row) > 0).length,
    dominatedBy: scored.find((other) => dominates(other.values, values))?.id ?? null,
  }));
}

type Standing = Pick<ScoredRow, 'score' | 'unacceptable'>;

/** Above 0 when `a` ranks before `b`, below 0 when behind, 0 when they share a rank. */
function lead(a: Standing, b: Standing): number {
  const accepted = Number(a.unacceptable.length === 0) - Number(b.unacceptable.length === 0);
  if (accepted !== 0) return accepted;
  return Math.abs(a.score - b.score) > sameScore ? a.score - b.score : 0;
}
