import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { swingOf, widestFirst } from '../../../../src-main/model/judge/swings.ts';

const figure = fc.double({ min: -1e3, max: 1e3, noNaN: true });

describe('swingOf()', () => {
  it('is 0 and turns nothing where the figure rests on nothing that moves', () => {
    fc.assert(
      fc.property(figure, (base) => {
        expect(swingOf({ base, low: base, high: base })).toEqual({ width: 0, changesSign: false });
      }),
      { seed: 1, numRuns: 50, endOnFailure: true },
    );
  });

  it('does not care which end is the better one', () => {
    fc.assert(
      fc.property(figure, figure, figure, (base, low, high) => {
        expect(swingOf({ base, low, high })).toEqual(swingOf({ base, low: high, high: low }));
      }),
      { seed: 2, numRuns: 50, endOnFailure: true },
    );
  });

  it('takes a lead that just ends for no change of places', () => {
    expect(swingOf({ base: 4, low: 0, high: 9 }).changesSign).toBe(false);
    expect(swingOf({ base: 4, low: -0.1, high: 9 }).changesSign).toBe(true);
    expect(swingOf({ base: -4, low: -9, high: 0.1 }).changesSign).toBe(true);
  });
});

describe('widestFirst()', () => {
  it('keeps the order of equals', () => {
    const rows = ['b2', 'a5', 'c2', 'd9'];
    expect(widestFirst(rows, (row) => Number(row[1]))).toEqual(['d9', 'a5', 'b2', 'c2']);
  });
});
