import { describe, it } from 'vitest';
import { rideAlong } from '../../src-main/model/ride/track/ridden-track.ts';
import { expectNear } from '../support/near.ts';
import { storeOf } from '../support/track-points.ts';

describe('the distance along a track', () => {
  it('is that of the haversine task of Rosetta Code', () => {
    // Rosetta Code, task "Haversine formula": 36.12 N 86.67 W to 33.94 N 118.40 W is 2886.444442837984 km on a sphere of 6371.0 km.
    const publishedKm = 2886.444442837984;
    const ours = 6371.0088 / 6371;
    const track = rideAlong(
      storeOf([
        { latDeg: 36.12, lonDeg: -86.67 },
        { latDeg: 33.94, lonDeg: -118.4 },
      ]),
    );
    // Printed to all its digits; what is left is rounding.
    expectNear(track.distanceKm, publishedKm * ours, 1e-8, 'distance, km');
  });
});
