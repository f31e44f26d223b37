import { describe, expect, it } from 'vitest';
import type { GeoPoint } from '../../../../../shared-types/great-circle.ts';
import { meanPlace } from '../../../../../src-main/model/ride/track/mean-place.ts';
import { rideAlong } from '../../../../../src-main/model/ride/track/ridden-track.ts';
import { expectNear } from '../../../../support/near.ts';
import { storeOf } from '../../../../support/track-points.ts';

const along = (latDeg: number, ...lonsDeg: number[]): GeoPoint[] =>
  lonsDeg.map((lonDeg) => ({ latDeg, lonDeg }));

function meanOf(...segments: readonly GeoPoint[][]): GeoPoint {
  const points = storeOf(...segments);
  return meanPlace(points, rideAlong(points));
}

describe('meanPlace()', () => {
  it('stays on the 180th meridian when the track crosses it', () => {
    const { lonDeg } = meanOf(along(10, 179, -179));
    expectNear(Math.abs(lonDeg), 180, 1e-9, 'longitude, deg');
    expectNear(meanOf(along(10, 178, -179.5)).lonDeg, 179.25, 1e-9, 'eastwards, deg');
    expectNear(meanOf(along(10, -178, 179.5)).lonDeg, -179.25, 1e-9, 'westwards, deg');
  });

  it('answers -180 to 180 after several rounds of the Earth', () => {
    const lonsDeg = Array.from({ length: 25 }, (_, index) => ((index * 45 + 180) % 360) - 180);
    const { lonDeg } = meanOf(along(0, ...lonsDeg));
    // Three whole rounds from 0 eastwards: the mean is half of 1080 degrees, on the 180th meridian.
    expectNear(Math.abs(lonDeg), 180, 1e-6, 'longitude, deg');
  });

  it('counts distance and not points', () => {
    // Many points on the first degree, none on the next nine.
    const { lonDeg } = meanOf(along(0, 0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 10));
    expectNear(lonDeg, 5, 1e-6, 'longitude, deg');
  });

  it('leaves out the gap between two segments', () => {
    const { latDeg } = meanOf(
      [
        { latDeg: 40, lonDeg: 7 },
        { latDeg: 41, lonDeg: 7 },
      ],
      [
        { latDeg: 50, lonDeg: 7 },
        { latDeg: 51, lonDeg: 7 },
      ],
    );
    expectNear(latDeg, (40.5 + 50.5) / 2, 1e-9, 'latitude, deg');
    expect(latDeg).toBeGreaterThan(45);
  });
});
