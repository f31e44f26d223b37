import { describe, expect, it } from 'vitest';
import type { Wind } from '../../../shared-types/tour.ts';
import { windColumns, windOf } from '../../../src-main/catalogue/leg-wind.ts';
import { findTour, saveTour } from '../../../src-main/catalogue/tours.ts';
import { demoTours } from '../../../db/demo/demo.ts';
import { openedDemo } from './temporary-catalogue.ts';

const { id: demoId, ...draft } = demoTours[0]!;

/** The legs of the demo, one for each form a wind can have. */
const winds: readonly Wind[] = [
  { as: 'along', headwindKmh: -12.5 },
  { as: 'calm' },
  { as: 'around', windKmh: 18 },
];
const windy = { ...draft, legs: draft.legs.map((leg, place) => ({ ...leg, wind: winds[place]! })) };

describe('windColumns()', () => {
  it('refuses a wind from all sides that pushes', () => {
    const { read, write } = openedDemo();
    const [first, ...others] = draft.legs;
    const pushing = {
      ...draft,
      legs: [{ ...first!, wind: { as: 'around' as const, windKmh: -5 } }, ...others],
    };
    expect(() => saveTour(write, pushing, demoId)).toThrow(/wind_in_one_form/);
    expect(findTour(read, demoId)).toEqual(demoTours[0]);
  });

  it('gives calm air no speed at all', () => {
    expect(windColumns({ as: 'calm' })).toEqual({ wind: 'calm', wind_kmh: null });
  });

  it('keeps a wind of no speed apart from calm air', () => {
    const still: Wind = { as: 'along', headwindKmh: 0 };
    expect(windOf(windColumns(still))).toEqual(still);
  });
});

describe('windOf()', () => {
  it.each(winds)('undoes windColumns() of %o', (wind) => {
    expect(windOf(windColumns(wind))).toEqual(wind);
  });
});

describe('a tour', () => {
  it('keeps the wind of each of its legs', () => {
    const { read, write } = openedDemo();
    saveTour(write, windy, demoId);
    expect(findTour(read, demoId)?.legs.map((leg) => leg.wind)).toEqual(winds);
  });

  it('goes back to calm air', () => {
    const { read, write } = openedDemo();
    saveTour(write, windy, demoId);
    saveTour(write, draft, demoId);
    expect(findTour(read, demoId)).toEqual(demoTours[0]);
  });
});
