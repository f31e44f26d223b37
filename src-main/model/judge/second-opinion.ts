import type { CriterionValues, Topsis } from '../../../shared-types/comparison.ts';
import { countedCriteria, criteria, type Preferences } from '../../../shared-types/settings.ts';
import { rankOf } from './rank.ts';
import { topsis } from './topsis.ts';

/** A scenario within the rider's limits. */
export interface Candidate {
  readonly id: string;
  readonly values: CriterionValues;
  /** How far it meets what the rider accepts: a lower tier ranks first in either opinion. */
  readonly tier: number;
}

/** Closeness differing by less is rounding, and shares a rank. */
const sameCloseness = 1e-9;

/** Ranks the scenarios within the limits by TOPSIS on the criteria that count, with the rider's weights. By id. */
export function secondOpinion(
  candidates: readonly Candidate[],
  preferences: Preferences,
): ReadonlyMap<string, Topsis> {
  const counted = countedCriteria(preferences);
  const closeness = topsis(
    candidates.map(({ values }) => counted.map((name) => values[name])),
    counted.map((name) => ({ weight: preferences[name].weight, better: criteria[name].better })),
  );
  const rows = candidates.map(({ id, tier }, index) => ({ id, tier, closeness: closeness[index]! }));
  return new Map(rows.map((row) => [row.id, { closeness: row.closeness, rank: rankOf(row, rows, lead) }]));
}

type Standing = Pick<Candidate, 'tier'> & Pick<Topsis, 'closeness'>;

function lead(a: Standing, b: Standing): number {
  if (a.tier !== b.tier) return b.tier - a.tier;
  return Math.abs(a.closeness - b.closeness) > sameCloseness ? a.closeness - b.closeness : 0;
}
