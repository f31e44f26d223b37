import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addDistance,
  createCells,
  steepestPct,
  stretchesOf,
  timedKm,
} from '../../../../../src-main/model/ride/track/stretch-cells.ts';
import { expectNear } from '../../../../support/near.ts';

const untimed = NaN;

describe('the cells of grade and speed', () => {
  it('hold grades within the steepest road', () => {
    const cells = createCells(1);
    addDistance(cells, 0, 80, untimed, 1);
    addDistance(cells, 0, -Infinity, untimed, 3);
    expect(stretchesOf(cells, 0).stretches).toEqual([
      { gradePct: -steepestPct, speedKmh: null, share: 0.75 },
      { gradePct: steepestPct, speedKmh: null, share: 0.25 },
    ]);
  });

  it('part grades at every 1 %, up and down alike, level alone', () => {
    const cells = createCells(1);
    for (const gradePct of [0.1, 1, 1.01, 2]) {
      addDistance(cells, 0, gradePct, untimed, 1);
      addDistance(cells, 0, -gradePct, untimed, 1);
    }
    addDistance(cells, 0, 0, untimed, 2);
    expect(stretchesOf(cells, 0).stretches.map(({ gradePct, share }) => [gradePct, share])).toEqual([
      [-1.505, 0.2],
      [-0.55, 0.2],
      [0, 0.2],
      [0.55, 0.2],
      [1.505, 0.2],
    ]);
  });

  it('give the mean over the distance as the grade of a cell', () => {
    const cells = createCells(1);
    addDistance(cells, 0, 2.2, untimed, 3);
    addDistance(cells, 0, 2.6, untimed, 1);
    expect(stretchesOf(cells, 0).stretches).toEqual([{ gradePct: 2.3, speedKmh: null, share: 1 }]);
  });

  it('take rounding about a whole per cent, or about level, for one grade', () => {
    for (const gradePct of [0, 1, -4]) {
      const cells = createCells(1);
      for (const off of [-1e-9, 0, 1e-9]) addDistance(cells, 0, gradePct + off, untimed, 1);
      expect(stretchesOf(cells, 0).stretches).toEqual([{ gradePct, speedKmh: null, share: 1 }]);
    }
  });

  it('give the distance over the time as the speed of a cell', () => {
    const cells = createCells(1);
    addDistance(cells, 0, 0, 21, 1);
    addDistance(cells, 0, 0, 24, 1);
    // 2 km in 1/21 + 1/24 h.
    expect(stretchesOf(cells, 0).stretches).toEqual([{ gradePct: 0, speedKmh: 22.4, share: 1 }]);
  });

  it('part speeds at every 5 km/h and take the fastest', () => {
    const cells = createCells(1);
    for (const kmh of [4.99, 5, 9.99, 10, 100]) addDistance(cells, 0, 0, kmh, 1);
    expect(stretchesOf(cells, 0).stretches.map(({ share }) => share)).toEqual([0.2, 0.4, 0.2, 0.2]);
  });

  it('keep pieces apart, and distance without a speed', () => {
    const cells = createCells(2);
    addDistance(cells, 0, 2, 15, 3);
    addDistance(cells, 1, -2, untimed, 5);
    addDistance(cells, 1, -2, 30, 5);
    expect(stretchesOf(cells, 0)).toEqual({
      distanceKm: 3,
      stretches: [{ gradePct: 2, speedKmh: 15, share: 1 }],
    });
    expect(stretchesOf(cells, 1)).toEqual({
      distanceKm: 10,
      stretches: [
        { gradePct: -2, speedKmh: 30, share: 0.5 },
        { gradePct: -2, speedKmh: null, share: 0.5 },
      ],
    });
    expect(timedKm(cells)).toBe(8);
  });

  it('share out all of a piece, however it is cut up', () => {
    const bit = fc.record({
      gradePct: fc.double({ min: -40, max: 40, noNaN: true }),
      speedKmh: fc.oneof(fc.constant(untimed), fc.double({ min: 3, max: 100, noNaN: true })),
      km: fc.double({ min: 1e-6, max: 5, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(bit, { minLength: 1, maxLength: 300 }), (bits) => {
        const cells = createCells(1);
        for (const { gradePct, speedKmh, km } of bits) addDistance(cells, 0, gradePct, speedKmh, km);
        const { stretches } = stretchesOf(cells, 0);
        expectNear(
          stretches.reduce((sum, { share }) => sum + share, 0),
          1,
          1e-4,
          'shares together',
        );
      }),
    );
  });
});
