import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boundAt } from '../../../../../src-main/model/judge/stop-plan/bound.ts';
import { tightBounds } from '../../../../../src-main/model/judge/stop-plan/prices.ts';
import { search } from '../../../../../src-main/model/judge/stop-plan/search.ts';
import { anyStop, evenGrid, stopProblem, stopSituation } from '../../../../support/stop-fixture.ts';

const run = { seed: 5, numRuns: 60, endOnFailure: true };
const anySituation = fc
  .tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 3 }))
  .chain(([stores, ports]) => anyStop(stores, ports));
const anyPrice = fc.constantFrom(0, 0.3, 1, 8, 90, 2000, 50_000);
const rounding = 1e-3;

describe('boundAt', () => {
  it('is never below the best plan, whatever the prices', () => {
    fc.assert(
      fc.property(
        anySituation,
        fc.array(anyPrice, { minLength: 3, maxLength: 3 }),
        anyPrice,
        anyPrice,
        (situation, rents, wallAWh, bankAWh) => {
          const problem = stopProblem(situation, evenGrid(3, 20));
          const portAnHour = problem.plugs.classes.map((_, place) => rents[place]!);
          const bound = boundAt(problem, { portAnHour, wallAWh, bankAWh });
          expect(bound.of(problem.start, 0)).toBeGreaterThanOrEqual(search(problem).worth - rounding);
        },
      ),
      run,
    );
  });

  it('is what the stores are worth when no time is left', () => {
    const problem = stopProblem(stopSituation(), evenGrid(2, 10));
    const bound = boundAt(problem, { portAnHour: [7], wallAWh: 0, bankAWh: 0 });
    expect(bound.of([problem.levels[0]!.numberOf(4)], 2)).toBeCloseTo(4, 9);
  });

  it('tells what a store alone would want', () => {
    const problem = stopProblem(stopSituation({ minutes: 30 }));
    const cheap = boundAt(problem, { portAnHour: [1], wallAWh: 0, bankAWh: 0 }).wanted(problem.start);
    expect(cheap.portHours[0]).toBeCloseTo(0.5, 9);
    expect(cheap.wallWh).toBeCloseTo(5, 9);
    const dear = boundAt(problem, { portAnHour: [100], wallAWh: 0, bankAWh: 0 }).wanted(problem.start);
    expect(dear).toMatchObject({ portHours: [0], wallWh: 0 });
  });
});

describe('tightBounds', () => {
  it('come within a tenth of the best plan where one port is for all', () => {
    fc.assert(
      fc.property(anyStop(3, 1), (situation) => {
        const problem = stopProblem(situation, evenGrid(12, 5));
        const limits = tightBounds(problem).map((bound) => bound.of(problem.start, 0));
        const { worth } = search(problem);
        expect(Math.min(...limits)).toBeGreaterThanOrEqual(worth - rounding);
        expect(Math.min(...limits)).toBeLessThanOrEqual(worth * 1.1 + 1);
      }),
      { ...run, numRuns: 20 },
    );
  });
});
