import { describe, expect, it } from 'vitest';
import type { CriterionValues, ScoredRow } from '../../../../shared-types/comparison.ts';
import { noLimits } from '../../../../shared-types/limits.ts';
import { countedCriteria, usualExtras, type Preferences } from '../../../../shared-types/settings.ts';
import { dominates, part, scorecard } from '../../../../src-main/model/judge/scorecard.ts';
import { expectNear } from '../../../support/near.ts';
import { criterionValues } from '../../../support/score-fixture.ts';

const preferences: Preferences = {
  cost: { weight: 0.25, satisfied: 0, unacceptable: 400 },
  grams: { weight: 0.25, satisfied: 0, unacceptable: 1000 },
  frontWheelGrams: { weight: 0.25, satisfied: 0, unacceptable: 500 },
  margin: { weight: 0.25, satisfied: 1, unacceptable: 0 },
  ...usualExtras,
  limits: noLimits,
};
const core = countedCriteria(preferences);
const values = (cost: number, grams: number, frontWheelGrams: number, margin: number): CriterionValues =>
  criterionValues({ cost, grams, frontWheelGrams, margin });

function scored(
  rows: Readonly<Record<string, CriterionValues>>,
  changes: Partial<Preferences> = {},
): readonly ScoredRow[] {
  const inputs = Object.entries(rows).map(([id, each]) => ({ id, values: each, airborne: true }));
  return scorecard(inputs, { ...preferences, ...changes }, 'EUR');
}

describe('part()', () => {
  const scale = { weight: 1, satisfied: 100, unacceptable: 300 };
  it.each([
    [50, 1],
    [100, 1],
    [200, 0.5],
    [300, 0],
    [900, 0],
    [NaN, 0],
    [Infinity, 0],
  ])('turns %d into %d', (value, expected) => expect(part(value, scale)).toBe(expected));

  it('gives nothing on a scale without extent, which no schema lets pass', () => {
    const none = { weight: 1, satisfied: 100, unacceptable: 100 };
    expect([50, 100, 150].map((value) => part(value, none))).toEqual([0, 0, 0]);
  });
});

describe('dominates()', () => {
  // The definition of Pareto dominance: equal options do not dominate each other.
  it('needs one criterion to be better and none worse', () => {
    expect(dominates(values(1, 1, 1, 1), values(1, 1, 1, 1), core)).toBe(false);
    expect(dominates(values(1, 1, 1, 2), values(1, 1, 1, 1), core)).toBe(true);
    expect(dominates(values(1, 2, 1, 2), values(1, 1, 1, 1), core)).toBe(false);
  });

  it('finds one pair among five kits of mass, price and days', () => {
    const days = (frontWheelGrams: number, cost: number, daysWithoutWall: number): CriterionValues =>
      criterionValues({ frontWheelGrams, cost, daysWithoutWall });
    const kits = {
      A: days(300, 60, 2),
      B: days(500, 150, 6),
      C: days(520, 160, 5.5),
      D: days(900, 400, 30),
      E: days(300, 60, 2),
    };
    const three = ['frontWheelGrams', 'cost', 'daysWithoutWall'] as const;
    const pairs = Object.entries(kits).flatMap(([a, one]) =>
      Object.entries(kits).flatMap(([b, other]) => (dominates(one, other, three) ? [`${a} over ${b}`] : [])),
    );
    expect(pairs).toEqual(['B over C']);
  });

  it('never rests on a value that is not known', () => {
    expect(dominates(values(0, 0, 0, NaN), values(1, 1, 1, 0), core)).toBe(false);
    expect(dominates(values(0, 0, 0, 1), values(1, 1, 1, NaN), core)).toBe(false);
  });
});

describe('scorecard()', () => {
  it('ranks none and one', () => {
    expect(scored({})).toEqual([]);
    expect(scored({ a: values(0, 0, 0, 1) })).toMatchObject([
      { rank: 1, score: 1, dominatedBy: null, topsis: { closeness: 1, rank: 1 } },
    ]);
  });

  it('adds the weighted parts', () => {
    const [row] = scored({ a: values(100, 500, 500, 0.5) });
    expectNear(row!.score, 0.25 * (0.75 + 0.5 + 0 + 0.5), 1e-12, 'score');
  });

  it('scores nothing without any weight, which no schema lets pass', () => {
    const weightless = Object.fromEntries(core.map((name) => [name, { ...preferences[name], weight: 0 }]));
    expect(scored({ a: values(0, 0, 0, 1) }, weightless)).toMatchObject([{ score: 0, rank: 1 }]);
  });

  it('gives equal scenarios the same rank', () => {
    const same = values(100, 100, 100, 0.5);
    const rows = scored({ b: same, a: same, c: values(400, 100, 100, 0.5) });
    expect(rows.map(({ id, rank, topsis }) => [id, rank, topsis?.rank])).toEqual([
      ['a', 1, 1],
      ['b', 1, 1],
      ['c', 3, 3],
    ]);
  });

  it('sets the better of two that satisfy fully before the other', () => {
    const rows = scored({ a: values(0, 0, 0, 1.2), b: values(0, 0, 0, 1.5) });
    expect(rows.map(({ id, rank, score, dominatedBy }) => [id, rank, score, dominatedBy])).toEqual([
      ['b', 1, 1, null],
      ['a', 2, 1, 'b'],
    ]);
  });

  it('never ranks what is unacceptable before what is not', () => {
    const rows = scored({ cheap: values(0, 0, 0, -0.4), dear: values(390, 990, 490, 0.02) });
    expect(rows.map(({ id, rank, unacceptable }) => [id, rank, unacceptable])).toEqual([
      ['dear', 1, []],
      ['cheap', 2, ['margin']],
    ]);
    expect(rows[1]!.score).toBeGreaterThan(rows[0]!.score);
  });

  it('still accepts a value exactly at the limit', () => {
    expect(scored({ a: values(400, 1000, 500, 0) })[0]!.unacceptable).toEqual([]);
  });

  it('names what a dominated scenario is dominated by', () => {
    const rows = scored({ good: values(10, 100, 0, 0.5), worse: values(20, 100, 0, 0.4) });
    expect(rows.map((row) => row.dominatedBy)).toEqual([null, 'good']);
  });

  it('ranks what is not known behind all that is, and says what', () => {
    const rows = scored({ unknown: values(0, 0, 0, NaN), bad: values(399, 999, 499, -0.5) });
    expect(rows.map(({ id, rank, notKnown, dominatedBy }) => [id, rank, notKnown, dominatedBy])).toEqual([
      ['bad', 1, [], null],
      ['unknown', 2, ['margin'], null],
    ]);
    expect(rows[1]!.parts.margin).toBe(0);
  });
});

describe('an extra', () => {
  const slow = criterionValues({ margin: 0.6, minutesLost: 30 });
  const quick = criterionValues({ margin: 0.5, minutesLost: 5 });
  const minutesLost = { counted: true, weight: 1, satisfied: 0, unacceptable: 20 };

  it('takes no part while it is not counted', () => {
    const rows = scored({ quick, slow });
    expect(rows.map(({ id, unacceptable, dominatedBy }) => [id, unacceptable, dominatedBy])).toEqual([
      ['slow', [], null],
      ['quick', [], 'slow'],
    ]);
    expect(Object.keys(rows[0]!.parts)).toEqual(['cost', 'grams', 'frontWheelGrams', 'margin']);
    expect(scored({ a: criterionValues({ risk: NaN }) })[0]!.notKnown).toEqual([]);
  });

  it('scores, marks and dominates once it is', () => {
    const rows = scored({ quick, slow }, { minutesLost });
    expect(rows.map(({ id, unacceptable, dominatedBy }) => [id, unacceptable, dominatedBy])).toEqual([
      ['quick', [], null],
      ['slow', ['minutesLost'], null],
    ]);
    expect(rows[0]!.parts.minutesLost).toBe(0.75);
    expectNear(rows[0]!.score, (0.25 * (1 + 1 + 1 + 0.5) + 0.75) / 2, 1e-12, 'score');
  });
});

describe('a limit', () => {
  const cheap = values(10, 900, 400, 0.1);
  const dear = values(300, 100, 0, 0.9);

  it('ranks what it leaves out behind all that stays, whatever it scores', () => {
    const rows = scored({ cheap, dear }, { limits: { ...noLimits, toBuy: 200 } });
    expect(rows.map(({ id, rank, topsis }) => [id, rank, topsis])).toEqual([
      ['cheap', 1, { closeness: 1, rank: 1 }],
      ['dear', 2, null],
    ]);
    expect(rows[1]!.excludedBy).toEqual([
      { limit: 'toBuy', text: 'costs 300\u00a0EUR, your limit is 200\u00a0EUR' },
    ]);
  });

  it('ranks it even behind what is not known', () => {
    const rows = scored({ unknown: values(0, 0, 0, NaN), dear }, { limits: { ...noLimits, toBuy: 200 } });
    expect(rows.map(({ id }) => id)).toEqual(['unknown', 'dear']);
  });

  it('lets what it leaves out dominate nothing that stays', () => {
    const rows = scorecard(
      [
        { id: 'grounded', values: values(1, 1, 1, 0.9), airborne: false },
        { id: 'flies', values: values(2, 2, 2, 0.8), airborne: true },
      ],
      { ...preferences, limits: { ...noLimits, byAir: true } },
      'EUR',
    );
    expect(rows.map(({ id, dominatedBy }) => [id, dominatedBy])).toEqual([
      ['flies', null],
      ['grounded', null],
    ]);
  });

  it('may leave out all', () => {
    const rows = scored({ cheap, dear }, { limits: { ...noLimits, margin: 2 } });
    expect(rows.map(({ rank, topsis, excludedBy }) => [rank, topsis, excludedBy.length])).toEqual([
      [1, null, 1],
      [2, null, 1],
    ]);
  });
});

describe('the second opinion', () => {
  it('may put another first', () => {
    // On these scales the margins differ by 0.4 of a part and the prices by 0.45; by norms the price of one is nothing at all.
    const rows = scored({ sure: values(180, 500, 100, 0.9), cheap: values(0, 500, 100, 0.4) });
    expect(rows.map(({ id, rank }) => [id, rank])).toEqual([
      ['sure', 1],
      ['cheap', 2],
    ]);
    expect(rows.map(({ topsis }) => topsis?.rank)).toEqual([2, 1]);
  });

  it('keeps what is unacceptable behind what is not', () => {
    const rows = scored({ failing: values(0, 0, 0, -0.1), fit: values(399, 999, 499, 0.01) });
    expect(rows.map(({ id, topsis }) => [id, topsis?.rank])).toEqual([
      ['fit', 1],
      ['failing', 2],
    ]);
    expect(rows[1]!.topsis!.closeness).toBeGreaterThan(rows[0]!.topsis!.closeness);
  });
});
