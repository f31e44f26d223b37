import { describe, expect, it } from 'vitest';
import { demoTours } from '../../../../db/demo/demo.ts';
import { mapTour } from '../../../../src-main/workbench/outlook/map-tour.ts';

const [tour] = demoTours;

describe('the tour of a row of the map', () => {
  const row = mapTour(tour!, 1, 30);

  it('is the leg alone, stretched', () => {
    expect(row.legs).toEqual([{ ...tour!.legs[1]!, days: 30 }]);
  });
  it('starts on the day of the leg', () => expect(row.startDate).toBe('2027-05-09'));
  it('starts with the tour on its first leg', () =>
    expect(mapTour(tour!, 0, 2).startDate).toBe(tour!.startDate));
  it('keeps rider, bicycle and devices', () =>
    expect({ ...row, legs: [], startDate: '' }).toEqual({ ...tour, legs: [], startDate: '' }));
});
