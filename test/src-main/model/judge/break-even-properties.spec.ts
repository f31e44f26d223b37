import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoSettings } from '../../../../db/demo/demo.ts';
import type { CriterionValues } from '../../../../shared-types/comparison.ts';
import { breakEvenCells, type MappedScenario } from '../../../../src-main/model/judge/break-even-map.ts';
import { criterionValues } from '../../../support/score-fixture.ts';

/* What must hold of any figures on a map. */

const run = { seed: 23, numRuns: 200, endOnFailure: true };
const grid = { days: [2, 30], gapsDays: [1, 7] };
const tours = 4;

const anyValues: fc.Arbitrary<CriterionValues> = fc
  .record({
    cost: fc.integer({ min: 0, max: 500 }),
    grams: fc.integer({ min: 0, max: 2000 }),
    frontWheelGrams: fc.integer({ min: 0, max: 900 }),
    margin: fc.integer({ min: -100, max: 300 }).map((percent) => percent / 100),
  })
  .map((values) => criterionValues(values));

const anyRow = fc.array(anyValues, { minLength: tours, maxLength: tours });

function mapped(id: string, [a, b, c, d]: readonly CriterionValues[]): MappedScenario {
  const figures = [[a!, b!], [c!, d!]].map((row) => row.map((values) => ({ values, capped: false }))); // prettier-ignore
  return { id, airborne: true, figures };
}

const cellsOf = (scenarios: readonly MappedScenario[]) =>
  breakEvenCells(grid, scenarios, demoSettings.preferences, 'EUR');

const worse = ({ cost, grams, frontWheelGrams, margin }: CriterionValues): CriterionValues =>
  criterionValues({
    cost: cost + 1,
    grams: grams + 1,
    frontWheelGrams: frontWheelGrams + 1,
    margin: margin - 0.01,
  });

describe('any break-even map', () => {
  it('is led nowhere by a scenario that is worse in everything', () => {
    fc.assert(
      fc.property(anyRow, anyRow, (own, other) => {
        // Its id comes first, so that no tie can hide a fault.
        const cells = cellsOf([mapped('a-worse', own.map(worse)), mapped('b', own), mapped('c', other)]);
        expect(cells.map(({ leaderId }) => leaderId)).not.toContain('a-worse');
      }),
      run,
    );
  });

  it('gives equal scenarios a lead of 0', () => {
    fc.assert(
      fc.property(anyRow, (own) => {
        for (const { carrying, leadPoints } of cellsOf([mapped('a', own), mapped('b', own)]))
          expect(leadPoints).toBe(carrying === 'none' ? null : 0);
      }),
      run,
    );
  });

  it('gives a lead of 0 to 100 points, to a leader with the largest margin where none carries the plan', () => {
    fc.assert(
      fc.property(anyRow, anyRow, (one, other) => {
        cellsOf([mapped('a', one), mapped('b', other)]).forEach(({ leadPoints, carrying, margin }, at) => {
          expect(leadPoints ?? 0).toBeGreaterThanOrEqual(0);
          expect(leadPoints ?? 0).toBeLessThanOrEqual(100);
          const best = Math.max(one[at]!.margin, other[at]!.margin);
          expect(carrying === 'none').toBe(best < 0);
          if (best < 0) expect(margin?.value).toBe(best);
        });
      }),
      run,
    );
  });

  it('changes no leader but for the better when a scenario joins', () => {
    fc.assert(
      fc.property(anyRow, anyRow, anyRow, (one, other, joining) => {
        const before = cellsOf([mapped('a', one), mapped('b', other)]);
        const after = cellsOf([mapped('a', one), mapped('b', other), mapped('c', joining)]);
        after.forEach(({ leaderId, carrying }, at) => {
          // Where none carried the plan the nearest led, whatever it scored.
          const wasNearest = before[at]!.carrying === 'none' && carrying !== 'none';
          if (!wasNearest) expect([before[at]!.leaderId, 'c']).toContain(leaderId);
        });
      }),
      run,
    );
  });
});
