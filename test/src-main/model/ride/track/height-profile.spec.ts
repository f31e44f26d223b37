import { describe, expect, it } from 'vitest';
import { mostTrackHeights } from '../../../../../shared-types/track.ts';
import { heightProfile, meanHeightM } from '../../../../../src-main/model/ride/track/height-profile.ts';
import { rideAlong } from '../../../../../src-main/model/ride/track/ridden-track.ts';
import { expectNear } from '../../../../support/near.ts';
import { northwards, storeOf } from '../../../../support/track-points.ts';

const trackOf = (...segments: readonly (readonly number[])[]) =>
  rideAlong(storeOf(...segments.map((heightsM) => northwards(20, heightsM))));
const profileAt = (...segments: readonly (readonly number[])[]): number[] =>
  heightProfile(trackOf(...segments), Float64Array.from(segments.flat()));

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

  it('runs over the segments one after another', () => {
    const low = new Array<number>(400).fill(10);
    const high = new Array<number>(400).fill(50);
    const profile = profileAt(low, high);
    // The middle one lies on the border between the two and may be either.
    expect(profile.slice(0, 150)).toEqual(new Array<number>(150).fill(10));
    expect(profile.slice(151)).toEqual(new Array<number>(150).fill(50));
  });
});

describe('meanHeightM()', () => {
  it('is half way up a ramp', () => {
    expectNear(meanHeightM(trackOf([0, 50, 100]), Float64Array.of(0, 50, 100)), 50, 1e-9, 'mean height, m');
  });

  it('counts each segment by its length', () => {
    const heightsM = [0, 0, 0, 0, 90, 90];
    const track = trackOf(heightsM.slice(0, 4), heightsM.slice(4));
    // 60 m at 0 and 20 m at 90.
    expectNear(meanHeightM(track, Float64Array.from(heightsM)), 22.5, 1e-9, 'mean height, m');
  });
});
