import { describe, expect, it } from 'vitest';
import { demoTours } from '../../../db/demo/demo.ts';
import type { Radiation } from '../../../shared-types/tour.ts';
import { readRadiation, writeRadiation } from '../../../src-main/catalogue/leg-radiation.ts';
import { findTour, removeTour, saveTour } from '../../../src-main/catalogue/tours.ts';
import { openedDemo } from './temporary-catalogue.ts';

const { id: tourId, ...draft } = demoTours[0]!;

/** Invented figures, each month another, so that a month in the wrong place shows. */
const own: Radiation = {
  as: 'own',
  kWhM2ADay: [0, 1.25, 2.5, 4, 5.5, 6.75, 7, 6, 4.5, 2.75, 1.5, 0.75],
};

describe('readRadiation()', () => {
  it('throws when a month is missing', () => {
    const { read, write } = openedDemo();
    writeRadiation(write, tourId, 1, own);
    write.exec('DELETE FROM leg_radiation WHERE month = 4');
    expect(() => readRadiation(read, tourId, 1)).toThrow(/radiation of 11 months for leg 1/);
  });

  it('is the sunshine of the station without figures', () => {
    expect(readRadiation(openedDemo().read, tourId, 0)).toEqual({ as: 'sunshine' });
  });
});

describe('writeRadiation()', () => {
  it('refuses a figure above what there can be', () => {
    const { write } = openedDemo();
    const tooMuch = { ...own, kWhM2ADay: own.kWhM2ADay.map((figure) => figure * 2) };
    expect(() => writeRadiation(write, tourId, 0, tooMuch)).toThrow(/kwh_per_m2_a_day BETWEEN/);
  });

  it('refuses the figures of a leg that is missing', () => {
    expect(() => writeRadiation(openedDemo().write, tourId, 7, own)).toThrow(/FOREIGN KEY/);
  });

  it('stores nothing for the sunshine of the station', () => {
    const { read, write } = openedDemo();
    writeRadiation(write, tourId, 0, { as: 'sunshine' });
    expect(read.prepare('SELECT count(*) FROM leg_radiation').pluck().get()).toBe(0);
  });

  it('is read again with January first, for its leg only', () => {
    const { read, write } = openedDemo();
    writeRadiation(write, tourId, 1, own);
    expect(readRadiation(read, tourId, 1)).toEqual(own);
    expect(readRadiation(read, tourId, 2)).toEqual({ as: 'sunshine' });
  });

  it('counts months from 1 in the table', () => {
    const { read, write } = openedDemo();
    writeRadiation(write, tourId, 1, own);
    const sql = 'SELECT month, kwh_per_m2_a_day FROM leg_radiation ORDER BY month LIMIT 2';
    expect(read.prepare(sql).raw().all()).toEqual([
      [1, 0],
      [2, 1.25],
    ]);
  });
});

describe('a tour', () => {
  const [first, ...others] = draft.legs;
  const withOwn = { ...draft, legs: [{ ...first!, radiation: own }, ...others] };

  it('keeps the radiation of each of its legs', () => {
    const { read, write } = openedDemo();
    saveTour(write, withOwn, tourId);
    expect(findTour(read, tourId)?.legs.map((leg) => leg.radiation)).toEqual([
      own,
      { as: 'sunshine' },
      { as: 'sunshine' },
    ]);
  });

  it('goes back to the sunshine of its station', () => {
    const { read, write } = openedDemo();
    saveTour(write, withOwn, tourId);
    saveTour(write, draft, tourId);
    expect(findTour(read, tourId)).toEqual(demoTours[0]);
  });

  it('takes its radiation along when it is removed', () => {
    const { read, write } = openedDemo();
    saveTour(write, withOwn, tourId);
    removeTour(write, tourId);
    expect(read.prepare('SELECT count(*) FROM leg_radiation').pluck().get()).toBe(0);
  });
});
