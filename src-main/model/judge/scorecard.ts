import type { CriterionValues, ScoredRow } from '../../../shared-types/comparison.ts';
import {
  countedCriteria,
  criteria,
  type Criterion,
  type CriterionScale,
  type Preferences,
} from '../../../shared-types/settings.ts';
import { exclusionsOf, type LimitedScenario } from './hard-limits.ts';
import { rankOf } from './rank.ts';
import { secondOpinion } from './second-opinion.ts';

/** A scenario as the scorecard sees it. */
export interface ScoreInput extends LimitedScenario {
  readonly id: string;
}

/** Differences in score below this are rounding. */
const sameScore = 1e-9;

/**
 * Turns a value to 0..1 on the rider's own scale: 1 at "fully satisfied" or better, 0 at "unacceptable" or worse, straight
 * between. It looks at no other scenario, so adding one never reorders the rest. A value that is no number scores 0.
 */
export function part(value: number, scale: CriterionScale): number {
  return Math.min(1, Math.max(0, openPart(value, scale)));
}

/** The same line drawn on beyond both ends. */
function openPart(value: number, scale: CriterionScale): number {
  const share = (value - scale.unacceptable) / (scale.satisfied - scale.unacceptable);
  return Number.isFinite(share) ? share : 0;
}

/** Simple additive weighting: the weighted mean of what each criterion scores. Weights need not add up to 1; all zero score 0. */
function weightedMean(
  counted: readonly Criterion[],
  preferences: Preferences,
  scoreOf: (name: Criterion) => number,
): number {
  const weights = counted.reduce((sum, name) => sum + preferences[name].weight, 0);
  if (weights === 0) return 0;
  return counted.reduce((sum, name) => sum + preferences[name].weight * scoreOf(name), 0) / weights;
}

/** Whether a value lies beyond what the rider accepts; the limit itself is still accepted. */
function isUnacceptable(value: number, scale: CriterionScale): boolean {
  return scale.satisfied < scale.unacceptable ? value > scale.unacceptable : value < scale.unacceptable;
}

/** Whether `a` is at least as good as `b` in every criterion that counts and better in one; never where a value is not known. */
export function dominates(a: CriterionValues, b: CriterionValues, counted: readonly Criterion[]): boolean {
  const gain = counted.map((name) =>
    criteria[name].better === 'lower' ? b[name] - a[name] : a[name] - b[name],
  );
  return gain.every((each) => each >= 0) && gain.some((each) => each > 0);
}

/**
 * Scores and ranks scenarios, best first; equal scores share a rank and keep the order of their ids. A scenario with a value
 * the rider called unacceptable never outranks one without, whatever else it saves; behind those come scenarios of which a
 * value is not known, and last what the rider's limits leave out.
 *
 * @param currency of the cost, for the words of the limits
 */
export function scorecard(
  rows: readonly ScoreInput[],
  preferences: Preferences,
  currency: string,
): readonly ScoredRow[] {
  const counted = countedCriteria(preferences);
  const judged = rows.map((row) => judgeRow(row, preferences, counted, currency));
  const choice = judged.filter(({ row }) => row.excludedBy.length === 0);
  const opinions = secondOpinion(choice, preferences);
  return judged
    .map((own): ScoredRow => ({
      ...own.row,
      rank: rankOf(own, judged, lead),
      dominatedBy: choice.find((other) => dominates(other.values, own.values, counted))?.id ?? null,
      topsis: opinions.get(own.id) ?? null,
    }))
    .sort((a, b) => a.rank - b.rank || (a.id < b.id ? -1 : 1));
}

/** A row before it is held against the others. */
interface Judged {
  readonly id: string;
  readonly values: CriterionValues;
  readonly tier: number;
  /** The score with no part cut off at its ends. */
  readonly openScore: number;
  readonly row: Omit<ScoredRow, 'rank' | 'dominatedBy' | 'topsis'>;
}

function judgeRow(
  { id, values, airborne }: ScoreInput,
  preferences: Preferences,
  counted: readonly Criterion[],
  currency: string,
): Judged {
  const scoreIn = (by: typeof part): number =>
    weightedMean(counted, preferences, (name) => by(values[name], preferences[name]));
  const row = {
    id,
    score: scoreIn(part),
    parts: Object.fromEntries(counted.map((name) => [name, part(values[name], preferences[name])])),
    unacceptable: counted.filter((name) => isUnacceptable(values[name], preferences[name])),
    notKnown: counted.filter((name) => !Number.isFinite(values[name])),
    excludedBy: exclusionsOf({ values, airborne }, preferences.limits, currency),
  };
  return { id, values, tier: tierOf(row), openScore: scoreIn(openPart), row };
}

/** Each ranks behind all of the tiers before it, whatever it scores. */
const tiers = { accepted: 0, unacceptable: 1, notKnown: 2, excluded: 3 } as const;

function tierOf({ excludedBy, notKnown, unacceptable }: Judged['row']): number {
  if (excludedBy.length > 0) return tiers.excluded;
  if (notKnown.length > 0) return tiers.notKnown;
  return unacceptable.length > 0 ? tiers.unacceptable : tiers.accepted;
}

/**
 * Of two with the same score the one ahead beyond the ends of its scales leads: a scenario that is better where the rider is
 * fully satisfied already is still the better one, and what it dominates never shares its rank.
 */
function lead(a: Judged, b: Judged): number {
  if (a.tier !== b.tier) return b.tier - a.tier;
  const gain = a.row.score - b.row.score;
  if (Math.abs(gain) > sameScore) return gain;
  const openGain = a.openScore - b.openScore;
  return Math.abs(openGain) > sameScore ? openGain : 0;
}
