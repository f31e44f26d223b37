import type { CriterionValues, ScoredRow } from '../../shared-types/comparison.ts';

/** A row of the scorecard about which there is nothing to say; `changes` replace whole fields. */
export function scoredRow(id: string, score: number, changes: Partial<ScoredRow> = {}): ScoredRow {
  return {
    id,
    score,
    rank: 1,
    parts: { cost: score, grams: score, frontWheelGrams: score, margin: score },
    unacceptable: [],
    notKnown: [],
    excludedBy: [],
    dominatedBy: null,
    topsis: { closeness: score, rank: 1 },
    ...changes,
  };
}

/** The figures of a kit that never leaves a must-have flat, costs no time and needs no wall for a week. */
export function criterionValues(changes: Partial<CriterionValues> = {}): CriterionValues {
  return {
    ...{ cost: 0, grams: 0, frontWheelGrams: 0, margin: 0 },
    ...{ risk: 0, minutesLost: 0, daysWithoutWall: 7 },
    ...changes,
  };
}
