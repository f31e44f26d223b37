import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gridsOf, slotHours } from '../../../../../src-main/model/judge/stop-plan/grid.ts';

const anyMinutes = fc.integer({ min: 1, max: 120 }).map((fives) => fives * 5);

describe('gridsOf', () => {
  it('cuts an hour into slots of five minutes first', () => {
    expect(gridsOf(60)[0]!.marks).toEqual([0, 5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60]);
  });

  it('leaves the rest for a shorter last slot', () => {
    expect(gridsOf(85)[0]).toEqual({ slotMinutes: 10, marks: [0, 10, 20, 30, 40, 50, 60, 70, 80, 85] });
    expect(slotHours(gridsOf(85)[0]!).at(-1)).toBeCloseTo(1 / 12, 12);
  });

  it('goes from at most 16 slots to a single one, coarser each time, and always covers the stop', () => {
    fc.assert(
      fc.property(anyMinutes, (minutes) => {
        const grids = gridsOf(minutes);
        expect(grids[0]!.marks.length - 1).toBeLessThanOrEqual(16);
        expect(grids.at(-1)!.marks).toEqual([0, minutes]);
        const lengths = grids.map(({ slotMinutes }) => slotMinutes);
        expect(lengths).toEqual([...new Set(lengths)].sort((a, b) => a - b));
        for (const grid of grids) {
          const hours = slotHours(grid);
          expect(Math.min(...hours)).toBeGreaterThan(0);
          expect(hours.reduce((sum, each) => sum + each, 0)).toBeCloseTo(minutes / 60, 9);
        }
      }),
      { seed: 3, numRuns: 60, endOnFailure: true },
    );
  });
});
