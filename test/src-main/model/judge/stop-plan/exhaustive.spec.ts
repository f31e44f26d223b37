import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { search } from '../../../../../src-main/model/judge/stop-plan/search.ts';
import { inOrder } from '../../../../../src-main/model/judge/stop-plan/situation.ts';
import { bestOfEveryPlan } from '../../../../support/every-stop-plan.ts';
import { anyStop, evenGrid, stopProblem } from '../../../../support/stop-fixture.ts';

/** Weighed: a tenth of a Wh stored, which is a hundred-thousandth of a Wh of a must-have's need. */
const negligible = 0.1;
/** Of sums of numbers up to a million. */
const rounding = 1e-6;

const run = { seed: 8, endOnFailure: true };

describe('the search, beside every sequence of every plugging', () => {
  it.each([
    { stores: 2, ports: 3, slots: 4, numRuns: 12 },
    { stores: 3, ports: 1, slots: 4, numRuns: 12 },
    { stores: 3, ports: 2, slots: 4, numRuns: 12 },
    { stores: 3, ports: 3, slots: 3, numRuns: 10 },
    { stores: 4, ports: 2, slots: 3, numRuns: 10 },
    { stores: 4, ports: 3, slots: 2, numRuns: 12 },
  ])('is as good for $stores stores, $ports ports, $slots slots', ({ stores, ports, slots, numRuns }) => {
    fc.assert(
      fc.property(anyStop(stores, ports), fc.constantFrom(5, 10, 20), (given, slotMinutes) => {
        const grid = evenGrid(slots, slotMinutes);
        const stop = inOrder({ ...given, minutes: slots * slotMinutes });
        const problem = stopProblem(stop, grid);
        const found = search(problem);
        const best = bestOfEveryPlan(stop, problem.hours);
        expect(found.isBest).toBe(true);
        expect(found.worth).toBeGreaterThanOrEqual(best - negligible - rounding);
        expect(found.worth).toBeLessThanOrEqual(best + rounding);
      }),
      { ...run, numRuns },
    );
  });
});
