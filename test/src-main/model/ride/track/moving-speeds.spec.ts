import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { movingSpeeds } from '../../../../../src-main/model/ride/track/moving-speeds.ts';
import { rideAlong } from '../../../../../src-main/model/ride/track/ridden-track.ts';
import { expectNear } from '../../../../support/near.ts';
import { storeOf, timedNorthwards, type TestPoint } from '../../../../support/track-points.ts';

/** Speed to each next point, km/h, rounded to a thousandth; null where there is none. */
function speedsOf(...segments: readonly TestPoint[][]): (number | null)[] {
  const points = storeOf(...segments);
  return [...movingSpeeds(points, rideAlong(points))].map((kmh) =>
    Number.isNaN(kmh) ? null : Math.round(kmh * 1000) / 1000,
  );
}

describe('movingSpeeds()', () => {
  it('has no speed without times', () => {
    expect(speedsOf(timedNorthwards(50, [NaN, NaN, NaN]))).toEqual([null, null, null]);
  });

  it('has no speed from a single time', () => {
    expect(speedsOf(timedNorthwards(50, [NaN, 100, NaN]))).toEqual([null, null, null]);
  });

  it('has no speed where the time goes back', () => {
    // 50 m in 10 s are 18 km/h; the clock is put back by an hour in the middle.
    expect(speedsOf(timedNorthwards(50, [3600, 3610, 3620, 20, 30, 40]))).toEqual([
      18,
      18,
      null,
      18,
      18,
      null,
    ]);
  });

  it('has no speed when all times are equal', () => {
    expect(speedsOf(timedNorthwards(50, [7, 7, 7]))).toEqual([null, null, null]);
  });

  it('bears two points with the same second', () => {
    // A recorder that writes twice a second and cuts the halves off: 2.5 m in half a second are 18 km/h.
    const timesS = Array.from({ length: 41 }, (_, index) => Math.floor(index / 2));
    expect(new Set(speedsOf(timedNorthwards(2.5, timesS)).slice(0, -1))).toEqual(new Set([18]));
  });

  it('takes nothing from less than ten seconds', () => {
    expect(speedsOf(timedNorthwards(20, [0, 4, 9]))).toEqual([null, null, null]);
  });

  it('takes slow stretches for stops', () => {
    // 8 m in 10 s are 2.88 km/h, 9 m are 3.24 km/h.
    expect(speedsOf(timedNorthwards(8, [0, 10, 20]))).toEqual([null, null, null]);
    expect(speedsOf(timedNorthwards(9, [0, 10, 20]))).toEqual([3.24, 3.24, null]);
  });

  it('takes stretches too fast to be cycled for none', () => {
    // 280 m in 10 s are 100.8 km/h, 275 m are 99 km/h.
    expect(speedsOf(timedNorthwards(280, [0, 10, 20]))).toEqual([null, null, null]);
    expect(speedsOf(timedNorthwards(275, [0, 10, 20]))).toEqual([99, 99, null]);
  });

  it('takes a speed over stretches of ten seconds', () => {
    // Every two seconds, 10 m each, but 20 m in the last of five: 60 m in 10 s are 21.6 km/h.
    const unsteady = [0, 10, 20, 30, 40, 60].map((m, index) => ({
      ...timedNorthwards(1, new Array<number>(61).fill(2 * index))[m]!,
    }));
    expect(speedsOf(unsteady)).toEqual([21.6, 21.6, 21.6, 21.6, 21.6, null]);
  });

  it('adds what is left at the end to the last stretch', () => {
    // 40 m in 16 s are 9 km/h.
    expect(speedsOf(timedNorthwards(10, [0, 4, 8, 12, 16]))).toEqual([9, 9, 9, 9, null]);
  });

  it('passes over points without a time', () => {
    // 100 m in 20 s are 18 km/h.
    expect(speedsOf(timedNorthwards(50, [0, NaN, 20, 30]))).toEqual([18, 18, 18, null]);
  });

  it('takes the time of a stop out', () => {
    const ride = timedNorthwards(50, [0, 10, 20]);
    const stood = [30, 40, 600].map((timeS) => ({ ...ride[2]!, timeS }));
    const onward = timedNorthwards(50, [0, 0, 0, 610, 620]).slice(3);
    expect(speedsOf([...ride, ...stood, ...onward])).toEqual([18, 18, null, null, null, 18, 18, null]);
  });

  it('has no speed from one segment to the next', () => {
    const later = timedNorthwards(50, [1000, 1010]);
    expect(speedsOf(timedNorthwards(50, [0, 10]), later)).toEqual([18, null, 18, null]);
  });

  it('gives back the time that was ridden', () => {
    // 60 to 250 m every 10 to 17 s: 12.7 to 90 km/h, all of it ridden.
    const rides = fc.array(fc.integer({ min: 10, max: 17 }), { minLength: 1, maxLength: 60 });
    fc.assert(
      fc.property(rides, fc.integer({ min: 60, max: 250 }), (lasts, stepM) => {
        const timesS = lasts.reduce<number[]>((times, s) => [...times, times.at(-1)! + s], [0]);
        const points = storeOf(timedNorthwards(stepM, timesS));
        const hours = [...movingSpeeds(points, rideAlong(points))]
          .slice(0, -1)
          .reduce((sum, kmh) => sum + stepM / 1000 / kmh, 0);
        expectNear(hours * 3600, timesS.at(-1)!, 1e-6 * timesS.at(-1)!, 'riding time, s');
      }),
    );
  });
});
