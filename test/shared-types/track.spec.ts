import { describe, expect, it } from 'vitest';
import { demoTrack } from '../../db/demo/demo-track.ts';
import { trackProfile, type TrackProfile } from '../../shared-types/track.ts';
import { trackFixture } from '../support/track-fixture.ts';

const level = (share: number) => ({ gradePct: 0, speedKmh: null, share });
const issuesOf = (changes: Partial<TrackProfile>): string[] =>
  (trackProfile.safeParse(trackFixture(changes)).error?.issues ?? []).map(
    ({ path, message }) => `${path.join('.')}: ${message}`,
  );

describe('trackProfile', () => {
  it.each([
    ['shares of nothing', [{ distanceKm: 100, stretches: [level(0)] }]],
    ['shares that add up to too little', [{ distanceKm: 100, stretches: [level(0.5), level(0.498)] }]],
    ['shares that add up to too much', [{ distanceKm: 100, stretches: [level(0.5), level(0.502)] }]],
  ])('refuses %s', (_, pieces) => {
    expect(issuesOf({ pieces })).toEqual(['pieces.0: more than 0 km, in shares that add up to 1']);
  });

  it('refuses a piece of no length', () => {
    const pieces = [100, 0].map((distanceKm) => ({ distanceKm, stretches: [level(1)] }));
    expect(issuesOf({ pieces })).toEqual(['pieces.1: more than 0 km, in shares that add up to 1']);
  });

  it.each([98, 102])('refuses pieces of %d km for a track of 100 km', (distanceKm) => {
    expect(issuesOf({ pieces: [{ distanceKm, stretches: [level(1)] }] })).toEqual([
      'pieces: pieces that together are as long as the track',
    ]);
  });

  it('bears the rounding of shares and lengths', () => {
    expect(issuesOf({ pieces: [{ distanceKm: 99.1, stretches: [level(0.5), level(0.4991)] }] })).toEqual([]);
  });

  it('takes the track of the demo', () => {
    expect(trackProfile.safeParse(demoTrack).error).toBeUndefined();
  });
});
