import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { profileTrack, type TrackPoint } from '../../../../src-main/model/ride/track.ts';
import { expectNear } from '../../../support/near.ts';

/** Points every 100 m or so northwards, at the elevations given. */
const north = (...elevationsM: (number | null)[]): TrackPoint[] =>
  elevationsM.map((elevationM, index) => ({ latDeg: 45 + index * 0.0009, lonDeg: 7, elevationM }));
const climb = (points: number, riseM: number): TrackPoint[] =>
  north(...Array.from({ length: points }, (_, index) => index * riseM));

describe('profileTrack()', () => {
  it('refuses points that lie all in one place', () => {
    expect(profileTrack('still', [north(5, 5).map((point) => ({ ...point, latDeg: 45 }))])).toBeNull();
    expect(profileTrack('empty', [])).toBeNull();
  });

  it('finds the grade of an even climb', () => {
    // 4 m in 100.08 m are 4 %, in bins of 1 %.
    const profile = profileTrack('climb', [climb(101, 4)])!;
    expectNear(profile.distanceKm, 10.007, 0.01, 'distance, km');
    expectNear(profile.ascentM, 400, 1e-6, 'climb, m');
    expect(profile.descentM).toBe(0);
    expect(profile.grades).toEqual([{ gradePct: 4, share: 1 }]);
  });

  it('does not ride the gap between two segments', () => {
    const far = climb(11, 0).map((point) => ({ ...point, lonDeg: 60 }));
    expectNear(profileTrack('gap', [climb(11, 0), far])!.distanceKm, 2.0, 0.01, 'distance, km');
  });

  it('takes points without elevation as level', () => {
    const profile = profileTrack('level', [north(...new Array<null>(50).fill(null))])!;
    expect(profile.grades).toEqual([{ gradePct: 0, share: 1 }]);
    expect(profile.ascentM).toBe(0);
  });

  it('gives the mirrored grades when ridden back', () => {
    const hills = fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 30, maxLength: 60 });
    fc.assert(
      fc.property(hills, (heights) => {
        // Whole stretches of two steps each way, so that both directions cut the track alike.
        const there = north(...heights.slice(0, 2 * Math.floor((heights.length - 1) / 2) + 1));
        const up = profileTrack('there', [there])!;
        const back = profileTrack('back', [there.toReversed()])!;
        expectNear(back.ascentM, up.descentM, 1e-6, 'climb, m');
        expectNear(
          back.grades.reduce((sum, { gradePct, share }) => sum + gradePct * share, 0),
          -up.grades.reduce((sum, { gradePct, share }) => sum + gradePct * share, 0),
          1e-6,
          'mean grade, %',
        );
      }),
    );
  });
});
