import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { topsis, type TopsisColumn } from '../../../../src-main/model/judge/topsis.ts';

const more = (weight: number): TopsisColumn => ({ weight, better: 'higher' });
const less = (weight: number): TopsisColumn => ({ weight, better: 'lower' });

describe('topsis()', () => {
  it('has nothing to say of no rows', () => expect(topsis([], [more(1)])).toEqual([]));

  it('calls one row, and rows that are equal, the best there is', () => {
    expect(topsis([[3, 4]], [more(1), less(1)])).toEqual([1]);
    const equal = [
      [3, 4],
      [3, 4],
    ];
    expect(topsis(equal, [more(1), less(1)])).toEqual([1, 1]);
  });

  it('calls all the best where no weight tells them apart', () => {
    expect(topsis([[1], [2]], [more(0)])).toEqual([1, 1]);
  });

  it('lets a column of zeros count nothing', () => {
    const rows = [
      [0, 1],
      [0, 3],
    ];
    expect(topsis(rows, [more(0.9), more(0.1)])).toEqual([0, 1]);
  });

  it('takes what is no number for the worst of its column', () => {
    expect(topsis([[1], [NaN], [3]], [less(1)])).toEqual([1, 0, 0]);
    expect(topsis([[-1], [-Infinity], [3]], [more(1)])).toEqual([0, 0, 1]);
    expect(topsis([[NaN], [NaN]], [more(1)])).toEqual([1, 1]);
  });

  it('takes values below 0', () => {
    expect(topsis([[-0.4], [0.1], [0.6]], [more(1)])).toEqual([0, 0.5, 1]);
  });

  const matrix = fc.array(fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 3, maxLength: 3 }), {
    minLength: 1,
    maxLength: 6,
  });
  const columns = fc.array(
    fc.record({ weight: fc.integer({ min: 0, max: 5 }), better: fc.constantFrom('lower', 'higher') }),
    {
      minLength: 3,
      maxLength: 3,
    },
  );
  const run = { seed: 7, numRuns: 200, endOnFailure: true };

  it('stays between 0 and 1, and never sets a row before one that is better in everything', () => {
    fc.assert(
      fc.property(matrix, columns, (rows, heads) => {
        const closeness = topsis(rows, heads);
        for (const value of closeness) expect(value >= 0 && value <= 1).toBe(true);
        for (const [i, a] of rows.entries())
          for (const [j, b] of rows.entries()) {
            const better = heads.every(({ better: way }, k) =>
              way === 'lower' ? a[k]! <= b[k]! : a[k]! >= b[k]!,
            );
            if (better) expect(closeness[i]!).toBeGreaterThanOrEqual(closeness[j]! - 1e-9);
          }
      }),
      run,
    );
  });

  it('does not depend on the units of a column or on how weights are scaled', () => {
    fc.assert(
      fc.property(matrix, columns, (rows, heads) => {
        const other = topsis(
          rows.map(([first, ...rest]) => [first! * 1000, ...rest]),
          heads.map((head) => ({ ...head, weight: head.weight * 7 })),
        );
        for (const [index, value] of topsis(rows, heads).entries())
          expect(other[index]).toBeCloseTo(value, 9);
      }),
      run,
    );
  });
});
