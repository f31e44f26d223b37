import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CriterionValues, ScoredRow } from '../../../../shared-types/comparison.ts';
import { noLimits, type Limits } from '../../../../shared-types/limits.ts';
import {
  countedCriteria,
  criteria,
  criterionNames,
  usualExtras,
  type Criterion,
  type Preferences,
} from '../../../../shared-types/settings.ts';
import { dominates, scorecard } from '../../../../src-main/model/judge/scorecard.ts';
import { criterionValues } from '../../../support/score-fixture.ts';

/* What must hold of any scenarios and any preferences. Ids are alphabetical, so that equal ranks keep the order given. */

const run = { seed: 11, numRuns: 200, endOnFailure: true };

const anyValues: fc.Arbitrary<CriterionValues> = fc
  .record({
    cost: fc.integer({ min: 0, max: 500 }),
    grams: fc.integer({ min: 0, max: 2000 }),
    frontWheelGrams: fc.integer({ min: 0, max: 800 }),
    // Whole hundredths: differences below 1e-9 of a score are rounding, and share a rank on purpose.
    margin: fc.integer({ min: -100, max: 300 }).map((percent) => percent / 100),
    risk: fc.integer({ min: 0, max: 200 }).map((flat) => flat / 200),
    minutesLost: fc.integer({ min: 0, max: 40 }),
    daysWithoutWall: fc.integer({ min: 0, max: 30 }),
  })
  .map((values) => criterionValues(values));

/** A figure in a hundred is not known. */
const sometimesUnknown = fc
  .tuple(anyValues, fc.constantFrom(...criterionNames), fc.integer({ min: 0, max: 9 }))
  .map(([values, name, draw]) => (draw === 0 ? { ...values, [name]: NaN } : values));

const weight = fc.integer({ min: 1, max: 20 }).map((twentieths) => twentieths / 20);
const anyPreferences: fc.Arbitrary<Preferences> = fc
  .record({ weights: fc.array(weight, { minLength: 7, maxLength: 7 }), counted: fc.boolean() })
  .map(({ weights, counted }) => ({
    cost: { weight: weights[0]!, satisfied: 50, unacceptable: 400 },
    grams: { weight: weights[1]!, satisfied: 300, unacceptable: 1500 },
    frontWheelGrams: { weight: weights[2]!, satisfied: 0, unacceptable: 500 },
    margin: { weight: weights[3]!, satisfied: 1, unacceptable: 0 },
    risk: { ...usualExtras.risk, counted, weight: weights[4]! },
    minutesLost: { ...usualExtras.minutesLost, counted, weight: weights[5]! },
    daysWithoutWall: { ...usualExtras.daysWithoutWall, counted, weight: weights[6]! },
    limits: noLimits,
  }));
const someLimits: fc.Arbitrary<Limits> = fc.record({
  toBuy: fc.option(fc.integer({ min: 0, max: 500 })),
  grams: fc.option(fc.integer({ min: 0, max: 2000 })),
  frontWheelGrams: fc.constant(null),
  margin: fc.option(fc.constantFrom(-0.5, 0, 0.5)),
  byAir: fc.boolean(),
});

const severalValues = fc.array(sometimesUnknown, { minLength: 2, maxLength: 6 });

function scored(all: readonly CriterionValues[], preferences: Preferences): readonly ScoredRow[] {
  const rows = all.map((values, index) => ({ id: `s${index}`, values, airborne: index % 2 === 0 }));
  return scorecard(rows, preferences, 'EUR');
}

describe('any scorecard', () => {
  it('never reorders the others when a scenario is added', () => {
    fc.assert(
      fc.property(
        severalValues,
        sometimesUnknown,
        anyPreferences,
        someLimits,
        (all, added, plain, limits) => {
          const preferences = { ...plain, limits };
          const before = scored(all, preferences).map(({ id }) => id);
          const after = scored([...all, added], preferences).map(({ id }) => id);
          expect(after.filter((id) => id !== `s${all.length}`)).toEqual(before);
        },
      ),
      run,
    );
  });

  it('ranks nothing first that is dominated, while every weight is above 0', () => {
    fc.assert(
      fc.property(severalValues, anyPreferences, someLimits, (all, plain, limits) => {
        const first = scored(all, { ...plain, limits }).filter(({ rank }) => rank === 1);
        expect(first.map(({ dominatedBy }) => dominatedBy)).toEqual(first.map(() => null));
      }),
      run,
    );
  });

  it('ranks nothing before what dominates it, by either opinion', () => {
    fc.assert(
      fc.property(severalValues, anyPreferences, (all, preferences) => {
        const rows = scored(all, preferences);
        for (const { rank, topsis, dominatedBy } of rows) {
          const better = rows.find(({ id }) => id === dominatedBy);
          expect(better?.rank ?? 0).toBeLessThan(rank);
          expect(better?.topsis?.rank ?? 0).toBeLessThanOrEqual(topsis!.rank);
        }
      }),
      run,
    );
  });

  it('never turns the leader of a criterion behind when that criterion weighs more', () => {
    const name = fc.constantFrom<Criterion>('cost', 'grams', 'frontWheelGrams', 'margin');
    fc.assert(
      fc.property(
        anyValues,
        anyValues,
        anyPreferences,
        name,
        weight,
        (a, b, preferences, criterion, more) => {
          const ahead =
            criteria[criterion].better === 'lower'
              ? a[criterion] < b[criterion]
              : a[criterion] > b[criterion];
          fc.pre(ahead);
          const raised = { ...preferences[criterion], weight: preferences[criterion].weight + more };
          const lead = (under: Preferences): number => {
            const rows = scored([a, b], under);
            return rows.find(({ id }) => id === 's1')!.rank - rows.find(({ id }) => id === 's0')!.rank;
          };
          if (lead(preferences) >= 0)
            expect(lead({ ...preferences, [criterion]: raised })).toBeGreaterThanOrEqual(0);
        },
      ),
      run,
    );
  });

  it('marks a scenario as dominated just when one within the limits dominates it', () => {
    fc.assert(
      fc.property(severalValues, anyPreferences, someLimits, (all, plain, limits) => {
        const preferences = { ...plain, limits };
        const rows = scored(all, preferences);
        const valuesOf = ({ id }: ScoredRow): CriterionValues => all[Number(id.slice(1))]!;
        const counted = countedCriteria(preferences);
        for (const row of rows) {
          const dominated = rows.some(
            (other) => other.excludedBy.length === 0 && dominates(valuesOf(other), valuesOf(row), counted),
          );
          expect(row.dominatedBy !== null).toBe(dominated);
        }
      }),
      run,
    );
  });

  it('ranks nothing that a limit leaves out before what stays, and says why it is out', () => {
    fc.assert(
      fc.property(severalValues, anyPreferences, someLimits, (all, plain, limits) => {
        const rows = scored(all, { ...plain, limits });
        const lastStaying = Math.max(
          0,
          ...rows.filter(({ topsis }) => topsis !== null).map(({ rank }) => rank),
        );
        for (const { rank, topsis, excludedBy } of rows) {
          expect(topsis === null).toBe(excludedBy.length > 0);
          if (topsis === null) expect(rank).toBeGreaterThan(lastStaying);
        }
      }),
      run,
    );
  });
});
