import { describe, expect, it } from 'vitest';
import { noLimits } from '../../shared-types/limits.ts';
import {
  criterionNames,
  usualExtras,
  type Criterion,
  type Preferences,
} from '../../shared-types/settings.ts';
import { scorecard } from '../../src-main/model/judge/scorecard.ts';
import { expectNear } from '../support/near.ts';
import { aircraft, aircraftCost, aircraftWeights } from './aircraft-choice.ts';

/*
 * Simple additive weighting in its textbook form: the more the better as a share of the largest value, a cost as the least
 * value over it. On our scales the first is "fully satisfied" at the largest and "unacceptable" at none; the second is no straight
 * line, so the shares of the cost are worked out here.
 */
const places = criterionNames.slice(0, aircraftWeights.length);
const least = Math.min(...aircraft.map((row) => row[aircraftCost]));
const shares = aircraft.map((row) =>
  row.map((value, place) => (place === aircraftCost ? least / value : value)),
);
const scales = Object.fromEntries(
  places.map((name, place) => [
    name,
    {
      weight: aircraftWeights[place]!,
      satisfied: Math.max(...shares.map((row) => row[place]!)),
      unacceptable: 0,
      ...(name in usualExtras && { counted: true }),
    },
  ]),
) as Omit<Preferences, 'daysWithoutWall' | 'limits'>;
const preferences: Preferences = {
  ...scales,
  daysWithoutWall: usualExtras.daysWithoutWall,
  limits: noLimits,
};

function valuesOf(row: readonly number[]): Record<Criterion, number> {
  const entries = criterionNames.map((name, place) => [name, row[place] ?? 0]);
  return Object.fromEntries(entries) as Record<Criterion, number>;
}

describe('simple additive weighting', () => {
  it('chooses among four aircraft otherwise than TOPSIS does', () => {
    const rows = shares.map((row, index) => ({
      id: `A${index + 1}`,
      values: valuesOf(row),
      airborne: true,
    }));
    const scored = scorecard(rows, preferences, 'EUR');
    // Reckoned outside the project; a textbook prints 0.835, 0.709, 0.852, 0.738 (from memory) for it rounds each share to two digits.
    const expected = { A1: 0.83547, A2: 0.70733, A3: 0.85141, A4: 0.73743 };
    for (const [id, score] of Object.entries(expected))
      expectNear(scored.find((row) => row.id === id)!.score, score, 1e-5, `score of ${id}`);
    expect(scored.map(({ id }) => id)).toEqual(['A3', 'A1', 'A4', 'A2']);
  });
});
