import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { greatCircleKm } from '../../../../../shared-types/great-circle.ts';
import { rideAlong } from '../../../../../src-main/model/ride/track/ridden-track.ts';
import { expectNear } from '../../../../support/near.ts';
import { metresADegree, northwards, storeOf } from '../../../../support/track-points.ts';

const level = (points: number): number[] => new Array<number>(points).fill(0);

describe('rideAlong()', () => {
  it('finds no distance in nothing, in one point, or in one place', () => {
    for (const points of [storeOf(), storeOf(northwards(100, [5])), storeOf(northwards(0, [5, 5, 5]))])
      expect(rideAlong(points)).toMatchObject({ distanceKm: 0, steps: 1, stepKm: 0 });
  });

  it('does not ride the gap between two segments', () => {
    const far = northwards(100, level(11)).map((point) => ({ ...point, lonDeg: 60 }));
    const track = rideAlong(storeOf(northwards(100, level(11)), far));
    expectNear(track.distanceKm, 2, 1e-9, 'distance, km');
    expect(track.alongKm[11]).toBe(track.alongKm[10]);
  });

  it('gives a segment of a single point no length', () => {
    const track = rideAlong(
      storeOf(northwards(100, level(3)), northwards(100, [0]), northwards(100, level(2))),
    );
    expectNear(track.distanceKm, 0.3, 1e-9, 'distance, km');
  });

  it('is cut into equal steps of about 20 m, over all its segments', () => {
    const track = rideAlong(storeOf(northwards(103.1, level(6)), northwards(103.1, level(6))));
    // 1031 m hold 51.55 steps of 20 m, rounded to 52.
    expect(track.steps).toBe(52);
    expectNear(track.stepKm, 1.031 / 52, 1e-9, 'step, km');
  });

  it('is one step where it is short', () => {
    expect(rideAlong(storeOf(northwards(4, [0, 0]))).steps).toBe(1);
  });

  it('never makes more steps than it may, however long the track', () => {
    // Pole to pole and back twenty times: 800,000 km.
    const poles = Array.from({ length: 41 }, (_, index) => ({
      latDeg: index % 2 === 0 ? 90 : -90,
      lonDeg: 0,
    }));
    const track = rideAlong(storeOf(poles));
    expectNear(track.distanceKm, (40 * 180 * metresADegree) / 1000, 1e-3, 'distance, km');
    expect(track.steps).toBe(500_000);
  });

  it('is as long as its great circles together', () => {
    const place = fc.record({
      latDeg: fc.double({ min: -90, max: 90, noNaN: true }),
      lonDeg: fc.double({ min: -180, max: 180, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(fc.array(place, { maxLength: 8 }), { maxLength: 5 }), (segments) => {
        const expected = segments.flatMap((points) =>
          points.slice(1).map((point, index) => greatCircleKm(points[index]!, point)),
        );
        const sumKm = expected.reduce((sum, km) => sum + km, 0);
        expectNear(rideAlong(storeOf(...segments)).distanceKm, sumKm, 1e-9 * (1 + sumKm), 'distance, km');
      }),
    );
  });
});
