import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { noonOf } from '../../../../src-main/model/sun/calendar.ts';
import { monthlyDiffuseShare } from '../../../../src-main/model/sun/daily-radiation.ts';
import { lightOfDay, type PlaceClimate } from '../../../../src-main/model/sun/day-light.ts';
import { expectNear } from '../../../support/near.ts';

const climate = (latDeg: number): PlaceClimate => ({
  latDeg,
  clearness: new Array<number>(12).fill(0.5),
  minDegC: new Array<number>(12).fill(5),
  maxDegC: new Array<number>(12).fill(15),
});
const day = (latDeg: number, date: string, clearness = 0.5, stepsPerDay = 96) =>
  lightOfDay(climate(latDeg), noonOf(date), clearness, monthlyDiffuseShare, stepsPerDay);
const sum = (values: Float64Array): number => values.reduce((total, each) => total + each, 0);

const anyLat = fc.double({ min: -90, max: 90, noNaN: true });
const anyDate = fc
  .integer({ min: 0, max: 800 })
  .map((days) => new Date(noonOf('2027-01-01', days)).toISOString().slice(0, 10));

describe('lightOfDay()', () => {
  it('gives finite light, never negative, on any day at any latitude', () => {
    fc.assert(
      fc.property(
        anyLat,
        anyDate,
        fc.double({ min: 0.05, max: 0.8, noNaN: true }),
        (lat, date, clearness) => {
          const { panelWm2, airDegC, radiationWhM2, dayLengthH } = day(lat, date, clearness);
          for (const values of [panelWm2.flat, panelWm2.aimed, airDegC]) {
            values.forEach((value) => expect(Number.isFinite(value)).toBe(true));
          }
          expect(Math.min(...panelWm2.flat, ...panelWm2.aimed, radiationWhM2)).toBeGreaterThanOrEqual(0);
          // The sun outside the atmosphere, nearest the Earth: 1366.7 x 1.033 W/m2 (FAO-56 eq. 23).
          expect(Math.max(...panelWm2.aimed)).toBeLessThan(1413);
          expect(dayLengthH).toBeGreaterThanOrEqual(0);
          expect(dayLengthH).toBeLessThanOrEqual(24);
        },
      ),
    );
  });

  it('adds up to the radiation of the day on a flat panel', () => {
    fc.assert(
      fc.property(fc.double({ min: -65, max: 65, noNaN: true }), anyDate, (lat, date) => {
        const { panelWm2, radiationWhM2 } = day(lat, date);
        // Where the sun is lowest the sky model holds the beam ratio below its horizon limit: 1 %.
        expectNear(
          sum(panelWm2.flat) / 4,
          radiationWhM2,
          0.01 * radiationWhM2 + 1,
          'light on a flat panel, Wh/m2',
        );
      }),
    );
  });

  it('gives an aimed panel more than a flat one on a clear day', () => {
    fc.assert(
      fc.property(fc.double({ min: -60, max: 60, noNaN: true }), anyDate, (lat, date) => {
        const { panelWm2, dayLengthH } = day(lat, date, 0.7);
        fc.pre(dayLengthH > 1);
        expect(sum(panelWm2.aimed)).toBeGreaterThan(sum(panelWm2.flat));
      }),
    );
  });

  it('never gives less in a clearer sky', () => {
    fc.assert(
      fc.property(anyLat, anyDate, fc.double({ min: 0.3, max: 0.7, noNaN: true }), (lat, date, clearness) => {
        const dull = day(lat, date, clearness);
        const clear = day(lat, date, clearness + 0.05);
        expect(sum(clear.panelWm2.aimed)).toBeGreaterThanOrEqual(sum(dull.panelWm2.aimed) - 1e-6);
        expect(sum(clear.panelWm2.flat)).toBeGreaterThanOrEqual(sum(dull.panelWm2.flat) - 1e-6);
      }),
    );
  });

  it.each([
    { what: 'polar night', date: '2027-12-21', hours: 0 },
    { what: 'polar day', date: '2027-06-21', hours: 24 },
  ])('knows the $what at 80 degrees north', ({ date, hours }) => {
    const { dayLengthH, radiationWhM2 } = day(80, date);
    expectNear(dayLengthH, hours, 1e-9, 'day length, h');
    expect(radiationWhM2 > 0).toBe(hours > 0);
  });

  it('mirrors the seasons over the equator', () => {
    expectNear(day(40, '2027-06-21').dayLengthH, day(-40, '2027-12-21').dayLengthH, 0.02, 'day length, h');
  });

  it('changes little with the length of a step', () => {
    const fine = sum(day(45, '2027-05-10', 0.5, 288).panelWm2.aimed) / 12;
    const coarse = sum(day(45, '2027-05-10', 0.5, 24).panelWm2.aimed);
    expectNear(coarse, fine, 0.02 * fine, 'light of the day, Wh/m2');
  });

  it('takes 29 February and the days across new year', () => {
    expect(day(40, '2028-02-29').radiationWhM2).toBeGreaterThan(day(40, '2028-02-28').radiationWhM2);
    const last = day(40, '2027-12-31').radiationWhM2;
    const first = day(40, '2028-01-01').radiationWhM2;
    expectNear(first, last, 0.02 * last, 'radiation across new year, Wh/m2');
  });
});
