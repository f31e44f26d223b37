import { describe, expect, it } from 'vitest';
import { demoSettings } from '../../../../db/demo/demo.ts';
import type { CriterionValues } from '../../../../shared-types/comparison.ts';
import type { Preferences } from '../../../../shared-types/settings.ts';
import { breakEvenCells, type MappedScenario } from '../../../../src-main/model/judge/break-even-map.ts';
import { criterionValues } from '../../../support/score-fixture.ts';

const oneTour = { days: [7], gapsDays: [3] };
const { preferences } = demoSettings;

function on(id: string, changes: Partial<CriterionValues>, airborne = true): MappedScenario {
  return { id, airborne, figures: [[{ values: criterionValues(changes), capped: false }]] };
}

/** The one tour of the map, under the demo's weights unless told otherwise. */
function cellOf(scenarios: readonly MappedScenario[], under: Preferences = preferences) {
  return breakEvenCells(oneTour, scenarios, under, 'EUR')[0]!;
}

const limited = (limits: Partial<Preferences['limits']>): Preferences => ({
  ...preferences,
  limits: { ...preferences.limits, ...limits },
});

describe('a tour of the break-even map', () => {
  it('has no leader where limits leave no scenario', () => {
    const cell = cellOf([on('a', { grams: 900 }), on('b', { grams: 800 })], limited({ grams: 500 }));
    expect(cell).toEqual({
      ...{ days: 7, gapDays: 3 },
      ...{ leaderId: null, secondId: null, leadPoints: null, carrying: 'none', margin: null },
    });
  });

  it('names the nearest where none carries the plan, whatever it costs', () => {
    const cell = cellOf([on('cheap', { margin: -0.3 }), on('dear', { margin: -0.05, cost: 390 })]);
    expect(cell).toMatchObject({ leaderId: 'dear', carrying: 'none', secondId: null, leadPoints: null });
    expect(cell.margin?.value).toBe(-0.05);
  });

  it('takes for nearest none that a limit leaves out', () => {
    const rows = [on('cheap', { margin: -0.3 }), on('dear', { margin: -0.05, cost: 390 })];
    expect(cellOf(rows, limited({ toBuy: 300 }))).toMatchObject({ leaderId: 'cheap', carrying: 'none' });
  });

  it('leaves out what must stay home when the rider flies', () => {
    const rows = [on('grounded', { margin: 1 }, false), on('flying', { margin: 0.1 })];
    expect(cellOf(rows, limited({ byAir: true }))).toMatchObject({ leaderId: 'flying', secondId: null });
  });

  it('says that only another carries the plan', () => {
    // By hand under the demo's weights: short scores 0.2 + 0.15 + 0.1 + 0.55 * (0.05 / 0.6) = 0.496, dear 0.1 + 0.55 * (0.1 / 0.6) = 0.192.
    const cell = cellOf([on('short', { margin: -0.05 }), on('dear', { margin: 0, cost: 400, grams: 1500 })]);
    expect(cell).toMatchObject({ leaderId: 'short', secondId: 'dear', carrying: 'another' });
    expect(cell.leadPoints).toBeCloseTo(30.417, 3);
  });

  it('gives the lead in points of 100', () => {
    // 100 of 400 in cost at a weight of 0.2: 5 points.
    const cell = cellOf([on('dear', { cost: 200 }), on('cheap', { cost: 100 })]);
    expect(cell).toMatchObject({ leaderId: 'cheap', secondId: 'dear', carrying: 'leader' });
    expect(cell.leadPoints).toBeCloseTo(5, 9);
  });

  it.each([
    { what: 'a figure that is unacceptable', second: { margin: -0.2 } },
    { what: 'a figure that is not known', second: { cost: NaN } },
  ])('gives no points before a second with $what', ({ second }) => {
    const cell = cellOf([on('first', { margin: 0.1, cost: 390, grams: 1490 }), on('second', second)]);
    expect(cell).toMatchObject({ leaderId: 'first', secondId: 'second', leadPoints: null });
  });

  it('has no second where a scenario is alone', () => {
    expect(cellOf([on('only', {})])).toMatchObject({ leaderId: 'only', secondId: null, leadPoints: null });
  });

  it('takes each tour’s own figures, row by row', () => {
    const figuresOf = (margins: readonly (readonly number[])[]) =>
      margins.map((row) =>
        row.map((margin) => ({ values: criterionValues({ margin }), capped: margin === 3 })),
      );
    const scenarios = [
      { id: 'a', airborne: true, figures: figuresOf([[0.4, 0.1], [0.4, 3]]) }, // prettier-ignore
      { id: 'b', airborne: true, figures: figuresOf([[0.1, 0.4], [0.1, 0.1]]) }, // prettier-ignore
    ];
    const cells = breakEvenCells({ days: [2, 9], gapsDays: [1, 4] }, scenarios, preferences, 'EUR');
    expect(cells.map(({ days, gapDays, leaderId }) => [days, gapDays, leaderId])).toEqual([
      [2, 1, 'a'],
      [2, 4, 'b'],
      [9, 1, 'a'],
      [9, 4, 'a'],
    ]);
    expect(cells.map(({ margin }) => margin?.capped)).toEqual([false, false, false, true]);
  });
});
