import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { panelSchedule } from '../../../../src-main/model/flow/panel-schedule.ts';
import { expectNear } from '../../../support/near.ts';

const always = { onlyAtStops: [], campFromH: 0, campToH: 24 };
const day = {
  ridingHours: 6,
  stops: [
    { label: 'Lunch', hours: 1 },
    { label: 'Coffee', hours: 0.5 },
  ],
};
const hours = (shares: Float64Array): number =>
  (shares.reduce((sum, share) => sum + share, 0) * 24) / shares.length;

describe('panelSchedule()', () => {
  it('lays nothing out at stops that are not named', () => {
    expect(hours(panelSchedule(day, { ...always, onlyAtStops: ['Dinner'] }, 96).atStops)).toBe(0);
  });

  it('counts the hours of the ride, the stops and the camp', () => {
    const { riding, atStops, inCamp } = panelSchedule(day, always, 96);
    expectNear(hours(riding), 6, 1e-9, 'riding, h');
    expectNear(hours(atStops), 1.5, 1e-9, 'at stops, h');
    expectNear(hours(inCamp), 16.5, 1e-9, 'in camp, h');
  });

  it('counts named stops alone', () => {
    expectNear(hours(panelSchedule(day, { ...always, onlyAtStops: ['Lunch'] }, 96).atStops), 1, 1e-9, 'h');
  });

  it('keeps to the hours set for camp', () => {
    const { inCamp } = panelSchedule(
      { ridingHours: 0, stops: [] },
      { ...always, campFromH: 10, campToH: 13 },
      24,
    );
    expect([...inCamp.slice(9, 14)]).toEqual([0, 1, 1, 1, 0]);
  });

  it('is in one place at a time whatever the day', () => {
    const anyStop = fc.record({
      label: fc.constantFrom('a', 'b'),
      hours: fc.integer({ min: 1, max: 24 }).map((n) => n / 12),
    });
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 8, noNaN: true }),
        fc.array(anyStop, { maxLength: 3 }),
        fc.constantFrom(24, 48, 96, 288),
        (ridingHours, stops, steps) => {
          const { riding, atStops, inCamp } = panelSchedule({ ridingHours, stops }, always, steps);
          riding.forEach((share, step) =>
            expectNear(share + atStops[step]! + inCamp[step]!, 1, 1e-9, 'share of the step'),
          );
        },
      ),
    );
  });
});
