import type { z } from 'zod';
import { largestTrackBytes } from '../../../shared-types/contract.ts';
import { fieldMeta } from '../../../shared-types/field.ts';
import { withUnit, wordsLocale } from '../../../shared-types/figures.ts';
import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import { trackProfile, type TrackProfile } from '../../../shared-types/track.ts';
import { createPointStore, type PointStore } from '../../model/ride/track/point-store.ts';
import { profileTrack, shortestTrackKm } from '../../model/ride/track/profile-track.ts';
import { rideAlong } from '../../model/ride/track/ridden-track.ts';
import { createGpxReader } from './gpx-reader.ts';
import { Unreadable } from './unreadable.ts';

const bytesAMb = 1_000_000;

/** One track while it is taken in. After a failure it is of no more use. */
export interface TrackIntake {
  /** @returns how many points have been read so far */
  add(text: string): Outcome<{ readonly points: number }>;
  finish(): Outcome<TrackProfile>;
}

/** Begins to take in a track that goes by `name`. The size is counted as it comes, in bytes of UTF-8, whatever was announced. */
export function createTrackIntake(name: string): TrackIntake {
  const points = createPointStore();
  const reader = createGpxReader(points);
  let bytes = 0;
  return {
    add: (text) => {
      bytes += Buffer.byteLength(text, 'utf8');
      if (bytes > largestTrackBytes)
        return failure('too-large', `The track is larger than ${largestTrackBytes / bytesAMb} MB.`);
      return readOutcome(() => {
        reader.add(text);
        return success({ points: points.count });
      });
    },
    finish: () =>
      readOutcome(() => {
        reader.end();
        return boiledDown(name, points);
      }),
  };
}

function readOutcome<T>(read: () => Outcome<T>): Outcome<T> {
  try {
    return read();
  } catch (fault) {
    if (!(fault instanceof Unreadable)) throw fault;
    return failure('unreadable', `This is not a GPX track that can be read: ${fault.message}.`);
  }
}

/** A profile must fit what a leg can hold, or the rider would learn of it only when saving the tour. */
function boiledDown(name: string, points: PointStore): Outcome<TrackProfile> {
  if (points.count < 2)
    return failure('unreadable', 'This GPX file holds no track or route of at least two points.');
  const profile = profileTrack(name, points);
  if (profile === null) return failure('unreadable', tooShort(rideAlong(points).distanceKm * mPerKm));
  const fits = trackProfile.safeParse(profile);
  if (fits.success) return success(profile);
  return failure('unreadable', `The track does not fit a leg: ${misfit(fits.error.issues[0])}.`);
}

const mPerKm = 1000;

function tooShort(lengthM: number): string {
  const shown = (metres: number): string => withUnit(metres, 'm', { locale: wordsLocale });
  // Rounded down, or a length just short of enough would read as enough.
  const found =
    lengthM < 1 ? 'all its points lie in one place' : `it is only ${shown(Math.floor(lengthM))} long`;
  return `The track is too short: ${found}, and a leg needs at least ${shown(shortestTrackKm * mPerKm)}.`;
}

/** What of the profile is out of range, by the name of its field, and what is allowed. */
function misfit(issue: z.core.$ZodIssue | undefined): string {
  const name = issue?.path[0] as keyof TrackProfile;
  const field = fieldMeta(trackProfile.shape[name])?.label ?? 'Track';
  return `${field}: allowed is ${issue?.message}`;
}
