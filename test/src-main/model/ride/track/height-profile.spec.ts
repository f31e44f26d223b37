import { describe, expect, it } from 'vitest';
import { mostTrackHeights } from '../../../../../shared-types/track.ts';
import { heightProfile, meanHeightM } from '../../../../../src-main/model/ride/track/height-profile.ts';
import type { Leap, TrackHeights } from '../../../../../src-main/model/ride/track/node-heights.ts';
import { rideAlong } from '../../../../../src-main/model/ride/track/ridden-track.ts';
import { expectNear } from '../../../../support/near.ts';
import { northwards, storeOf } from '../../../../support/track-points.ts';

/** A track with these heights at its nodes, 20 m apart. */
const trackAt = (heightsM: readonly number[]) => rideAlong(storeOf(northwards(20, heightsM)));
const heightsOf = (riddenM: readonly number[], leaps: readonly Leap[] = []): TrackHeights => ({
  riddenM: Float64Array.from(riddenM),
  leaps,
});
const profileAt = (riddenM: readonly number[], leaps: readonly Leap[] = []): number[] =>
  heightProfile(trackAt(riddenM), heightsOf(riddenM, leaps));

describe('heightProfile()', () => {
  it('shows every node of a short track', () => {
    expect(profileAt([1, 5, 2, 8])).toEqual([1, 5, 2, 8]);
  });

  it('keeps heights to a tenth of a metre', () => {
    expect(profileAt([1.04, 1.06])).toEqual([1, 1.1]);
  });

  it('shows start, end and equal distances of a long one', () => {
    const ramp = Array.from({ length: 6001 }, (_, node) => node / 10);
    const profile = profileAt(ramp);
    expect(profile).toHaveLength(mostTrackHeights);
    profile.forEach((heightM, index) => expectNear(heightM, index * 2, 0.051, `height ${index}, m`));
  });

  it('leaps where the track does', () => {
    // 801 nodes are 16 km; the leap lies half way.
    const profile = profileAt(new Array<number>(801).fill(10), [{ atKm: 8, riseM: 40 }]);
    // The middle one lies on the border between the two and may be either.
    expect(profile.slice(0, 150)).toEqual(new Array<number>(150).fill(10));
    expect(profile.slice(151)).toEqual(new Array<number>(150).fill(50));
  });
});

describe('meanHeightM()', () => {
  it('is half way up a ramp', () => {
    const ramp = [0, 50, 100];
    expectNear(meanHeightM(trackAt(ramp), heightsOf(ramp)), 50, 1e-9, 'mean height, m');
  });

  it('counts what lies before and after a leap by its length', () => {
    const level = [0, 0, 0, 0, 0];
    // 60 m at 0 and 20 m at 90.
    const heights = heightsOf(level, [{ atKm: 0.06, riseM: 90 }]);
    expectNear(meanHeightM(trackAt(level), heights), 22.5, 1e-9, 'mean height, m');
  });
});
