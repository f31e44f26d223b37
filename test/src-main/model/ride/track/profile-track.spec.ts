import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { trackProfile, type TrackProfile } from '../../../../../shared-types/track.ts';
import { profileTrack } from '../../../../../src-main/model/ride/track/profile-track.ts';
import { expectNear } from '../../../../support/near.ts';
import {
  gradeShares,
  metresADegree,
  northwards,
  recordedHours,
  storeOf,
  type TestPoint,
} from '../../../../support/track-points.ts';

const none = NaN;
const profileOf = (...segments: readonly TestPoint[][]): TrackProfile =>
  profileTrack('test', storeOf(...segments))!;

/** Hills of uneven steps: figures that never fall on the border between two cells. */
const hills = fc.array(
  fc.record({
    stepM: fc.integer({ min: 1, max: 300 }).map((step) => step * 1.0713),
    riseM: fc.integer({ min: -20, max: 20 }).map((rise) => rise * 0.7331),
    lastS: fc.integer({ min: 1, max: 90 }),
  }),
  { minLength: 40, maxLength: 120 },
);

function ride(steps: readonly { stepM: number; riseM: number; lastS: number }[]): TestPoint[] {
  let [northM, elevationM, timeS] = [0, 800, 0];
  const points: TestPoint[] = [{ latDeg: 45, lonDeg: 7, elevationM, timeS }];
  for (const { stepM, riseM, lastS } of steps) {
    northM += stepM;
    elevationM += riseM;
    timeS += lastS;
    points.push({ latDeg: 45 + northM / metresADegree, lonDeg: 7, elevationM, timeS });
  }
  return points;
}

describe('profileTrack()', () => {
  it('refuses points that lie all in one place', () => {
    expect(profileTrack('still', storeOf(northwards(0, [5, 5, 5])))).toBeNull();
    expect(profileTrack('short', storeOf(northwards(99, [5, 5])))).toBeNull();
    expect(profileTrack('empty', storeOf())).toBeNull();
  });

  it('says when no point carries a height', () => {
    const profile = profileOf(northwards(100, new Array<number>(50).fill(none)));
    expect(profile).toMatchObject({
      heightShare: 0,
      meanElevationM: null,
      heightsM: [],
      ascentM: 0,
      descentM: 0,
    });
    expect(profile.pieces[0]!.stretches).toEqual([{ gradePct: 0, speedKmh: null, share: 1 }]);
  });

  it('says what share of the points carries a height', () => {
    const profile = profileOf(northwards(100, [0, none, 8, 12, none, 20, 24, 28]));
    expect(profile.heightShare).toBe(0.75);
    expect([...gradeShares(profile)]).toEqual([[4, 1]]);
  });

  it('counts heights on fewer than half of the points as none', () => {
    const few = [0, 4, 8, none, none, none, none];
    expect(profileOf(northwards(100, few))).toMatchObject({
      heightShare: 0,
      meanElevationM: null,
      heightsM: [],
      ascentM: 0,
    });
    expect(profileOf(northwards(100, [0, 4, none, none])).heightShare).toBe(0.5);
  });

  it.each([-20, -3, 0, 0.4, 0.49, 0.51, 1, 2.3, 7, 25])(
    'finds all of a steady ramp at %d per cent',
    (gradePct) => {
      const profile = profileOf(
        northwards(
          100,
          Array.from({ length: 101 }, (_, point) => point * gradePct),
        ),
      );
      expect(profile.pieces[0]!.stretches).toEqual([{ gradePct, speedKmh: null, share: 1 }]);
      expectNear(profile.distanceKm, 10, 1e-6, 'distance, km');
      expectNear(profile.ascentM, Math.max(0, 100 * gradePct), 1e-6, 'ascent, m');
      expectNear(profile.descentM, Math.max(0, -100 * gradePct), 1e-6, 'descent, m');
      expectNear(profile.meanElevationM!, 50 * gradePct, 1e-6, 'mean height, m');
    },
  );

  it('keeps the order of valley and hills by piece', () => {
    const flat = new Array<number>(100).fill(0);
    const steep = Array.from({ length: 102 }, (_, point) => point * 6);
    const { pieces } = profileOf(northwards(100, [...flat, ...steep]));
    expect(pieces).toHaveLength(2);
    expect(pieces[0]!.stretches[0]).toMatchObject({ gradePct: 0 });
    // The first steps of the hill are rounded off.
    expectNear(pieces[1]!.stretches.at(-1)!.gradePct, 6, 0.01, 'grade of the hill, %');
  });

  it('fits the contract whatever the ride', () => {
    fc.assert(
      fc.property(hills, (steps) => {
        const profile = profileTrack('test', storeOf(ride(steps)));
        if (profile !== null) expect(trackProfile.safeParse(profile).error?.issues ?? []).toEqual([]);
      }),
    );
  });

  it('shares out all of the distance in each piece', () => {
    fc.assert(
      fc.property(hills, (steps) => {
        const profile = profileOf(ride(steps));
        const piecesKm = profile.pieces.reduce((sum, { distanceKm }) => sum + distanceKm, 0);
        expectNear(piecesKm, profile.distanceKm, 1e-9 * profile.distanceKm, 'pieces together, km');
        for (const { stretches } of profile.pieces)
          expectNear(
            stretches.reduce((sum, { share }) => sum + share, 0),
            1,
            1e-4,
            'shares of a piece',
          );
      }),
    );
  });

  it('has the mirrored grades when ridden back', () => {
    fc.assert(
      fc.property(hills, (steps) => {
        const there = ride(steps).map(({ timeS: _, ...point }) => point);
        const up = profileOf(there);
        const back = profileOf(there.toReversed());
        const mirrored = gradeShares(back);
        for (const [gradePct, share] of gradeShares(up))
          expectNear(mirrored.get(-gradePct + 0) ?? 0, share, 1e-5, `share at ${gradePct} %, mirrored`);
        expectNear(back.ascentM, up.descentM, 1e-6, 'ascent on the way back, m');
        expectNear(back.descentM, up.ascentM, 1e-6, 'descent on the way back, m');
      }),
    );
  });

  it('never climbs more than its points', () => {
    fc.assert(
      fc.property(hills, (steps) => {
        const rawM = steps.reduce((sum, { riseM }) => sum + Math.max(0, riseM), 0);
        expect(profileOf(ride(steps)).ascentM).toBeLessThanOrEqual(rawM + 1e-6);
      }),
    );
  });

  it('gives back the recorded riding time from its stretches', () => {
    // 20 to 300 m in 10 to 12 s: 6 to 108 km/h, of which what is ridden counts.
    const fast = fc.array(
      fc.record({
        stepM: fc.integer({ min: 20, max: 270 }),
        riseM: fc.integer({ min: -9, max: 9 }),
        lastS: fc.integer({ min: 10, max: 12 }),
      }),
      { minLength: 20, maxLength: 120 },
    );
    fc.assert(
      fc.property(fast, (steps) => {
        const profile = profileOf(ride(steps));
        const hours = steps.reduce((sum, { lastS }) => sum + lastS, 0) / 3600;
        expect(profile.timedShare).toBe(1);
        // Speeds are kept to 0.01 km/h, a thousandth of the slowest here.
        expectNear(recordedHours(profile), hours, 2e-3 * hours, 'riding time, h');
      }),
    );
  });

  it('says on what share of the distance there are speeds', () => {
    const timed = ride(new Array(20).fill({ stepM: 50, riseM: 0, lastS: 10 }));
    const untimed = ride(new Array(20).fill({ stepM: 150, riseM: 0, lastS: 10 })).map(
      ({ timeS: _, ...rest }) => rest,
    );
    expectNear(profileOf(timed, untimed).timedShare, 0.25, 1e-9, 'share with a speed');
  });
});
