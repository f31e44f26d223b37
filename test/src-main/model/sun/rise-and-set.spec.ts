import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { noonOf } from '../../../../src-main/model/sun/calendar.ts';
import { sunOfDay } from '../../../../src-main/model/sun/position.ts';
import { riseAndSet, seenDaylightHours } from '../../../../src-main/model/sun/rise-and-set.ts';
import { expectNear } from '../../../support/near.ts';
import { anyDate, anyLatDeg } from '../../../support/random-sun.ts';

const rad = Math.PI / 180;

describe('riseAndSet()', () => {
  it.each([
    { date: '2027-12-21', as: 'down' },
    { date: '2027-06-21', as: 'up' },
  ])('says the sun stays $as at 75 degrees north on $date', ({ date, as }) => {
    expect(riseAndSet(noonOf(date), 75, 20)).toEqual({ as });
  });

  it.each([-90, 90])('answers at the pole, latitude %d', (lat) => {
    for (const date of ['2027-01-10', '2027-03-20', '2027-07-10', '2027-09-23'])
      expect(['rises', 'up', 'down']).toContain(riseAndSet(noonOf(date), lat, 0).as);
  });

  it('rises and sets about noon on any day outside the polar circles', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -60, max: 60, noNaN: true }),
        fc.double({ min: -180, max: 180, noNaN: true }),
        anyDate,
        (lat, lon, date) => {
          const sun = riseAndSet(noonOf(date), lat, lon);
          if (sun.as !== 'rises') throw new Error(`The sun is ${sun.as} all day at ${lat}.`);
          // The equation of time stays within 17 minutes.
          expectNear((sun.riseH + sun.setH) / 2, 12, 0.3, 'middle of the day, h');
        },
      ),
      { numRuns: 40 },
    );
  });

  it('is the same on both sides of the date line', () => {
    const [west, east] = [
      riseAndSet(noonOf('2027-05-01'), 50, -180),
      riseAndSet(noonOf('2027-05-01'), 50, 180),
    ];
    if (west.as !== 'rises' || east.as !== 'rises') throw new Error('The sun rises at 50 degrees in May.');
    // A day apart in real time: two to three minutes of change at most.
    expectNear(west.riseH, east.riseH, 0.05, 'sunrise, h');
  });
});

describe('seenDaylightHours()', () => {
  it('agrees with sunrise and sunset', () => {
    const noonMs = noonOf('2027-05-10');
    const sun = riseAndSet(noonMs, 48, 0);
    if (sun.as !== 'rises') throw new Error('The sun rises at 48 degrees in May.');
    const hours = seenDaylightHours(48 * rad, sunOfDay(noonMs).declinationRad);
    expectNear(hours, sun.setH - sun.riseH, 0.05, 'daylight, h');
  });

  it('stays within 0 to 24 hours everywhere', () => {
    fc.assert(
      fc.property(anyLatDeg, anyDate, (lat, date) => {
        const hours = seenDaylightHours(lat * rad, sunOfDay(noonOf(date)).declinationRad);
        expect(hours).toBeGreaterThanOrEqual(0);
        expect(hours).toBeLessThanOrEqual(24);
      }),
    );
  });
});
