import { describe, expect, it } from 'vitest';
import { findStops } from '../../../../../src-main/model/ride/track/stops.ts';
import { metresADegree, storeOf, timedNorthwards, type TestPoint } from '../../../../support/track-points.ts';

/** First and last point of each stop. */
const stopsOf = (...segments: readonly TestPoint[][]): (readonly [number, number])[] =>
  findStops(storeOf(...segments)).map(({ first, last }) => [first, last]);

/** A point a second where the ride is so many metres along, north up to `turnM` and back on a road beside it. */
function thereAndBack(metresAtS: (s: number) => number, turnM: number, lastS: number): TestPoint[] {
  return Array.from({ length: lastS + 1 }, (_, timeS) => {
    const m = metresAtS(timeS);
    const northM = m < turnM ? m : 2 * turnM - m;
    return { latDeg: 45 + northM / metresADegree, lonDeg: m < turnM ? 7 : 7.0001, timeS };
  });
}

const everySecond = (count: number): number[] => Array.from({ length: count }, (_, index) => index);

describe('findStops()', () => {
  it('finds none without times', () => {
    expect(stopsOf(timedNorthwards(0, new Array<number>(50).fill(NaN)))).toEqual([]);
  });

  it('finds none where time stands still, however many points', () => {
    expect(stopsOf(timedNorthwards(0, new Array<number>(100_000).fill(7)))).toEqual([]);
  });

  it('finds none in a steady ride, from 3 km/h on', () => {
    expect(stopsOf(timedNorthwards(0.85, everySecond(200)))).toEqual([]);
    expect(stopsOf(timedNorthwards(0.8, everySecond(200)))).toEqual([[0, 199]]);
  });

  it('finds none where a ride comes back close to itself', () => {
    for (const kmh of [5, 9, 18, 36])
      expect(stopsOf(thereAndBack((s) => (s * kmh) / 3.6, 300, Math.floor(2000 / kmh)))).toEqual([]);
  });

  it('finds a stop, with the few metres before and after it', () => {
    // 5 m/s, and 100 s without moving: 16.7 m around are too little for a window of 20 s.
    const metres = (s: number): number => 5 * Math.min(s, 100) + 5 * Math.max(0, s - 200);
    expect(stopsOf(thereAndBack(metres, 1e6, 300))).toEqual([[97, 203]]);
  });

  it('finds a stop that was not recorded but for its ends', () => {
    const ride = timedNorthwards(50, [0, 10, 20, 620, 630]);
    const stood = ride.map((point, index) =>
      index < 3 ? point : { ...point, latDeg: ride[index - 1]!.latDeg },
    );
    expect(stopsOf(stood)).toEqual([[2, 3]]);
  });

  it('finds none from one segment to the next, nor where the clock went back', () => {
    const place = timedNorthwards(0, [0, 10]);
    expect(stopsOf(place, timedNorthwards(0, [600, 610]))).toEqual([]);
    expect(stopsOf(timedNorthwards(0, [600, 610, 0, 10]))).toEqual([]);
  });

  it('passes over points without a time', () => {
    expect(stopsOf(timedNorthwards(0, [NaN, 0, NaN, 15, NaN, 30, NaN]))).toEqual([[1, 5]]);
  });

  it('finds a stop on the 180th meridian', () => {
    const at = (lonDeg: number, timeS: number): TestPoint => ({ latDeg: 0, lonDeg, timeS });
    expect(stopsOf([at(179.99999, 0), at(-179.99999, 15), at(179.99999, 30), at(-179.99999, 45)])).toEqual([
      [0, 3],
    ]);
  });
});
