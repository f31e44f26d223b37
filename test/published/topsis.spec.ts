import { describe, expect, it } from 'vitest';
import { topsis, type TopsisColumn } from '../../src-main/model/judge/topsis.ts';
import { expectNear } from '../support/near.ts';
import { aircraft, aircraftCost, aircraftWeights } from './aircraft-choice.ts';

const columnsOf = (weights: readonly number[], cost: number | null): readonly TopsisColumn[] =>
  weights.map((weight, place) => ({ weight, better: place === cost ? 'lower' : 'higher' }));

function expectCloseness(got: readonly number[], expected: readonly number[], tolerance: number): void {
  expect(got).toHaveLength(expected.length);
  for (const [row, value] of expected.entries())
    expectNear(got[row]!, value, tolerance, `closeness ${row + 1}`);
}

/** The places of the rows from the best on, counted from 1. */
function orderOf(closeness: readonly number[]): readonly number[] {
  return closeness
    .map((value, index) => ({ value, place: index + 1 }))
    .sort((a, b) => b.value - a.value)
    .map(({ place }) => place);
}

describe('TOPSIS', () => {
  it('chooses among four aircraft as Hwang & Yoon 1981 do', () => {
    const closeness = topsis(aircraft, columnsOf(aircraftWeights, aircraftCost));
    // Reckoned outside the project to 1e-5; the book prints 0.643, 0.268, 0.613, 0.312 (from memory), which these round to.
    expectCloseness(closeness, [0.64328, 0.26838, 0.61354, 0.31229], 1e-5);
    expect(orderOf(closeness)).toEqual([1, 3, 4, 2]);
  });

  it('follows a lecture on a choice of four with a cost', () => {
    // scribd document 825129859, "Lecture 10": weights, rows 2 to 4 and the best of each column, 0.059, 0.244, 0.162, 0.080. Only this
    // first row yields that best. The lecture rounds on its way, so that it agrees to 0.002; the values below are reckoned
    // outside the project without rounding, to 1e-5.
    const rows = [
      [7, 9, 9, 8],
      [8, 7, 8, 7],
      [9, 6, 8, 9],
      [6, 7, 8, 6],
    ];
    const closeness = topsis(rows, columnsOf([0.1, 0.4, 0.3, 0.2], 3));
    expectCloseness(closeness, [0.74269, 0.4036, 0.17587, 0.44143], 1e-5);
    expect(orderOf(closeness)).toEqual([1, 4, 2, 3]);
  });

  it('normalises and weights a small matrix as printed', () => {
    // scribd document 546223190 prints the weighted, normalised matrix (0.5703, 0.2124), (0.3355, 0.1593), (0.2684, 0.1062). From it, by
    // hand, for the middle row: hypot(0.0671, 0.0531) over that plus hypot(0.2348, 0.0531) = 0.08557 / 0.32630 = 0.2622. Its four
    // digits leave the last place open.
    const rows = [
      [17, 12],
      [10, 9],
      [8, 6],
    ];
    expectCloseness(topsis(rows, columnsOf([0.714, 0.286], null)), [1, 0.2622, 0], 2e-4);
  });
});
