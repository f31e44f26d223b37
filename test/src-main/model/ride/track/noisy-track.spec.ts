import { describe, expect, it } from 'vitest';
import { randomStreams, standardNormal } from '../../../../../src-main/model/random.ts';
import { profileTrack } from '../../../../../src-main/model/ride/track/profile-track.ts';
import { expectNear } from '../../../../support/near.ts';
import { noisyRideHours, noisyRideKm, rideWithStop } from '../../../../support/noisy-ride.ts';
import {
  metresADegree,
  northwards,
  recordedHours,
  riddenClimb,
  storeOf,
  type TestPoint,
} from '../../../../support/track-points.ts';

const profileOf = (...segments: readonly TestPoint[][]) => profileTrack('test', storeOf(...segments))!;

describe('the profile of a ride with a stop at which the positions waver', () => {
  const noises = [
    { as: 'white', spreadM: 0.5 },
    { as: 'white', spreadM: 1 },
    { as: 'white', spreadM: 2 },
    { as: 'drifting', spreadM: 3 },
    { as: 'drifting', spreadM: 5 },
  ] as const;
  const cases = noises.flatMap((noise) => [1, 5].map((everyS) => ({ ...noise, everyS })));

  it.each(cases)(
    'has its distance and moving time, $as $spreadM m every $everyS s',
    ({ everyS, ...noise }) => {
      const profile = profileOf(rideWithStop(noise, everyS));
      expectNear(profile.distanceKm, noisyRideKm, 0.01 * noisyRideKm, 'distance, km');
      expectNear(recordedHours(profile), noisyRideHours, 0.03 * noisyRideHours, 'moving time, h');
      expect(profile.timedShare).toBeGreaterThan(0.99);
    },
  );

  it('keeps the way of a bicycle pushed slowly up its bends', () => {
    // 2.5 km/h on a zigzag whose legs go 100 m across and 25 m up: slower than riding, but no wandering.
    const everyS = 5;
    const walkedM = Array.from({ length: 720 }, (_, index) => (index * everyS * 2.5) / 3.6);
    const legM = Math.hypot(100, 25);
    const points = walkedM.map((m, index) => {
      const legs = m / legM;
      const part = legs % 1;
      const eastM = 100 * (Math.floor(legs) % 2 === 0 ? part : 1 - part);
      return {
        latDeg: (25 * legs) / metresADegree,
        lonDeg: eastM / metresADegree,
        timeS: index * everyS,
      };
    });
    const walkedKm = walkedM.at(-1)! / 1000;
    const profile = profileOf(points);
    // Bends are cut over 30 m at most.
    expectNear(profile.distanceKm, walkedKm, 0.1 * walkedKm, 'distance, km');
    expect(profile.timedShare).toBeLessThan(0.1);
  });
});

describe('the profile of heights that waver', () => {
  const noise = (seed: number): (() => number) => {
    const stream = randomStreams(seed).next().value;
    return () => standardNormal(stream);
  };
  /** 48 km, a point every `stepM`, at these heights with white noise. */
  function wavering(heightAtM: (m: number) => number, spreadM: number, stepM: number, seed = 5): TestPoint[] {
    const draw = noise(seed);
    const heightsM = Array.from({ length: 48_000 / stepM + 1 }, (_, index) => heightAtM(index * stepM));
    return northwards(
      stepM,
      heightsM.map((heightM) => heightM + spreadM * draw()),
    );
  }

  it.each([5, 10, 20])('is level on level ground, with 1 m of noise every %d m', (stepM) => {
    const profile = profileOf(wavering(() => 300, 1, stepM));
    // A wavering may once or twice pass for a rise of 3 m.
    expect(profile.ascentM).toBeLessThan(10);
    const offLevelKm = profile.pieces
      .flatMap(({ distanceKm, stretches }) =>
        stretches.map((each) => ({ ...each, km: each.share * distanceKm })),
      )
      .reduce((sum, { gradePct, km }) => sum + (Math.abs(gradePct) > 0.5 ? km : 0), 0);
    expect(offLevelKm / profile.distanceKm).toBeLessThan(0.02);
  });

  it.each([
    { hillM: 20, everyM: 1500, spreadM: 0 },
    { hillM: 40, everyM: 2000, spreadM: 0 },
    { hillM: 60, everyM: 3000, spreadM: 1 },
    { hillM: 300, everyM: 12_000, spreadM: 1 },
  ])('keeps hills of $hillM m every $everyM m, noise of $spreadM m', ({ hillM, everyM, spreadM }) => {
    const hill = (m: number): number => 300 - (hillM / 2) * Math.cos((2 * Math.PI * m) / everyM);
    const climbM = (hillM * 48_000) / everyM;
    const { ascentM, descentM } = profileOf(wavering(hill, spreadM, 10));
    expectNear(ascentM, climbM, 0.03 * climbM, 'ascent, m');
    expectNear(descentM, climbM, 0.03 * climbM, 'descent, m');
  });

  it.each([0, 0.5, 1])('rides the climb that it shows, noise of %d m', (spreadM) => {
    const hill = (m: number): number => 300 - 8 * Math.cos((2 * Math.PI * m) / 3000) + m / 500;
    const profile = profileOf(wavering(hill, spreadM, 10));
    const ridden = riddenClimb(profile);
    // Grades are kept to 1e-4 %, shares to 1e-7.
    expectNear(ridden.ascentM, profile.ascentM, 0.1, 'ascent, m');
    expectNear(ridden.descentM, profile.descentM, 0.1, 'descent, m');
    const netM = profile.heightsM.at(-1)! - profile.heightsM[0]!;
    expectNear(ridden.ascentM - ridden.descentM, netM, 0.2, 'ascent less descent, m');
  });

  it('is the same however short its segments', () => {
    const whole = wavering(() => 300, 1, 10);
    const parts = Array.from({ length: whole.length / 10 }, (_, part) =>
      // Each begins where the one before it ended.
      whole.slice(part * 10, part * 10 + 11),
    );
    const [one, many] = [profileOf(whole), profileOf(...parts)];
    expectNear(many.distanceKm, one.distanceKm, 1e-6, 'distance, km');
    expectNear(many.ascentM, one.ascentM, 0.1, 'ascent, m');
    expect(riddenClimb(many).ascentM).toBeLessThan(10);
  });

  it('is smooth over segments that a recorder left a gap between', () => {
    // Nine points of ten, 10 m apart, each time the recorder paused.
    const whole = wavering(() => 300, 1, 10);
    const parts = Array.from({ length: whole.length / 10 }, (_, part) =>
      whole.slice(part * 10, part * 10 + 9),
    );
    const profile = profileOf(...parts);
    expectNear(profile.distanceKm, 0.8 * 48, 0.01, 'distance, km');
    expect(profile.ascentM).toBeLessThan(10);
    expectNear(riddenClimb(profile).ascentM, profile.ascentM, 0.1, 'ascent, m');
  });
});
