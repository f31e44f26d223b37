import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CriterionValues } from '../../../../shared-types/comparison.ts';
import type { Preferences } from '../../../../shared-types/settings.ts';
import { dominates, part, scorecard } from '../../../../src-main/model/judge/scorecard.ts';
import { expectNear } from '../../../support/near.ts';

const preferences: Preferences = {
  cost: { weight: 0.25, satisfied: 0, unacceptable: 400 },
  grams: { weight: 0.25, satisfied: 0, unacceptable: 1000 },
  frontWheelGrams: { weight: 0.25, satisfied: 0, unacceptable: 500 },
  margin: { weight: 0.25, satisfied: 1, unacceptable: 0 },
};
const values = (cost: number, grams: number, frontWheelGrams: number, margin: number): CriterionValues => ({
  cost,
  grams,
  frontWheelGrams,
  margin,
});
const anyValues = fc.record({
  cost: fc.integer({ min: 0, max: 500 }),
  grams: fc.integer({ min: 0, max: 2000 }),
  frontWheelGrams: fc.integer({ min: 0, max: 800 }),
  margin: fc.double({ min: -1, max: 3, noNaN: true }),
});

describe('part()', () => {
  const scale = { weight: 1, satisfied: 100, unacceptable: 300 };
  it.each([
    [50, 1],
    [100, 1],
    [200, 0.5],
    [300, 0],
    [900, 0],
    [NaN, 0],
  ])('turns %d into %d', (value, expected) => expect(part(value, scale)).toBe(expected));
});

describe('dominates()', () => {
  // The definition of Pareto dominance: equal options do not dominate each other.
  it('needs one criterion to be better and none worse', () => {
    expect(dominates(values(1, 1, 1, 1), values(1, 1, 1, 1))).toBe(false);
    expect(dominates(values(1, 1, 1, 2), values(1, 1, 1, 1))).toBe(true);
    expect(dominates(values(1, 2, 1, 2), values(1, 1, 1, 1))).toBe(false);
  });
});

describe('scorecard()', () => {
  it('ranks none and one', () => {
    expect(scorecard([], preferences)).toEqual([]);
    expect(scorecard([{ id: 'a', values: values(0, 0, 0, 1) }], preferences)).toMatchObject([
      { rank: 1, score: 1 },
    ]);
  });

  it('adds the weighted parts', () => {
    const [row] = scorecard([{ id: 'a', values: values(100, 500, 500, 0.5) }], preferences);
    expectNear(row!.score, 0.25 * (0.75 + 0.5 + 0 + 0.5), 1e-12, 'score');
  });

  it('gives equal scores the same rank', () => {
    const same = values(100, 100, 100, 0.5);
    const rows = scorecard(
      [
        { id: 'b', values: same },
        { id: 'a', values: same },
        { id: 'c', values: values(400, 100, 100, 0.5) },
      ],
      preferences,
    );
    expect(rows.map(({ id, rank }) => [id, rank])).toEqual([
      ['a', 1],
      ['b', 1],
      ['c', 3],
    ]);
  });

  it('never ranks what is unacceptable before what is not', () => {
    const rows = scorecard(
      [
        { id: 'cheap', values: values(0, 0, 0, -0.4) },
        { id: 'dear', values: values(390, 990, 490, 0.02) },
      ],
      preferences,
    );
    expect(rows.map(({ id, rank, unacceptable }) => [id, rank, unacceptable])).toEqual([
      ['dear', 1, []],
      ['cheap', 2, ['margin']],
    ]);
    expect(rows[1]!.score).toBeGreaterThan(rows[0]!.score);
  });

  it('still accepts a value exactly at the limit', () => {
    const [row] = scorecard([{ id: 'a', values: values(400, 1000, 500, 0) }], preferences);
    expect(row!.unacceptable).toEqual([]);
  });

  it('names what a dominated scenario is dominated by', () => {
    const rows = scorecard(
      [
        { id: 'good', values: values(10, 100, 0, 0.5) },
        { id: 'worse', values: values(20, 100, 0, 0.4) },
      ],
      preferences,
    );
    expect(rows.map((row) => row.dominatedBy)).toEqual([null, 'good']);
  });

  it('never reorders the others when a scenario is added', () => {
    fc.assert(
      fc.property(fc.array(anyValues, { minLength: 2, maxLength: 5 }), anyValues, (all, added) => {
        const rows = all.map((each, index) => ({ id: `s${index}`, values: each }));
        const before = scorecard(rows, preferences).map(({ id }) => id);
        const after = scorecard([...rows, { id: 'added', values: added }], preferences).map(({ id }) => id);
        expect(after.filter((id) => id !== 'added')).toEqual(before);
      }),
    );
  });

  it('never ranks a scenario behind one it dominates', () => {
    fc.assert(
      fc.property(anyValues, anyValues, (a, b) => {
        fc.pre(dominates(a, b));
        const rows = scorecard(
          [
            { id: 'a', values: a },
            { id: 'b', values: b },
          ],
          preferences,
        );
        const rank = (id: string): number => rows.find((row) => row.id === id)!.rank;
        expect(rank('a')).toBeLessThanOrEqual(rank('b'));
      }),
    );
  });
});
