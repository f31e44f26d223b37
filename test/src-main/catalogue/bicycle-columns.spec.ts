import { describe, expect, it } from 'vitest';
import { bicycle, type Bicycle } from '../../../shared-types/tour.ts';
import { bicycleColumns, bicycleOf } from '../../../src-main/catalogue/bicycle-columns.ts';
import { findTour, saveTour } from '../../../src-main/catalogue/tours.ts';
import { demoTours } from '../../../db/demo/demo.ts';
import { openedDemo } from './temporary-catalogue.ts';

const { id: demoId, ...draft } = demoTours[0]!;

const unusual: Bicycle = {
  dragAreaM2: 0.431,
  pavedRolling: 0.0105,
  drivetrainEfficiency: 0.95,
  downhillCapKmh: 60,
};

describe('bicycleColumns()', () => {
  it('refuses a bicycle beyond the limits of the table', () => {
    const { read, write } = openedDemo();
    const perfect = { ...draft, bicycle: { ...unusual, drivetrainEfficiency: 1 } };
    expect(() => saveTour(write, perfect, demoId)).toThrow(/drivetrain_efficiency BETWEEN/);
    expect(findTour(read, demoId)).toEqual(demoTours[0]);
  });

  it('has a column for each field of the bicycle', () => {
    const values = Object.values(bicycleColumns(unusual));
    expect(values).toEqual(Object.keys(bicycle.shape).map((key) => unusual[key as keyof Bicycle]));
  });

  it('is undone by bicycleOf()', () => {
    expect(bicycleOf(bicycleColumns(unusual))).toEqual(unusual);
  });

  it('is stored with the tour, which stays as it was', () => {
    const { read, write } = openedDemo();
    saveTour(write, { ...draft, bicycle: unusual }, demoId);
    expect(findTour(read, demoId)).toEqual({ ...demoTours[0]!, bicycle: unusual });
  });
});
