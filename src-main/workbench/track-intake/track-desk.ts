import { randomUUID } from 'node:crypto';
import { failure, type Outcome } from '../../../shared-types/outcome.ts';
import type { TrackProfile } from '../../../shared-types/track.ts';
import { createTrackIntake, type TrackIntake } from './track-intake.ts';

/** So many tracks are taken in at once; a page that was closed in the middle leaves its own behind. */
export const mostOpenTracks = 4;
/** A track without a new part for so long is given up. */
export const longestWaitMs = 600_000;

/** The tracks that are being taken in. */
export interface TrackDesk {
  /** @returns the id under which the parts follow */
  begin(name: string): string;
  add(trackId: string, text: string): Outcome<{ readonly points: number }>;
  /** Answers what is kept of the track and forgets the rest. */
  finish(trackId: string): Outcome<TrackProfile>;
  /** @returns whether there was such a track */
  drop(trackId: string): boolean;
}

interface OpenTrack {
  readonly intake: TrackIntake;
  readonly lastPartMs: number;
}

/** A track that can't be read is forgotten at once. There is no timer: what is too old goes when the desk is next used. */
export function createTrackDesk(nowMs: () => number): TrackDesk {
  /** In the order of their last parts. */
  const open = new Map<string, OpenTrack>();
  const take = (trackId: string): TrackIntake | undefined => {
    dropWaiting(open, nowMs() - longestWaitMs);
    const track = open.get(trackId);
    open.delete(trackId);
    return track?.intake;
  };
  const put = (trackId: string, intake: TrackIntake): void =>
    void open.set(trackId, { intake, lastPartMs: nowMs() });
  return {
    begin: (name) => {
      dropWaiting(open, nowMs() - longestWaitMs);
      dropOldest(open, mostOpenTracks - 1);
      const trackId = randomUUID();
      put(trackId, createTrackIntake(name));
      return trackId;
    },
    add: (trackId, text) => {
      const intake = take(trackId);
      if (intake === undefined) return notOpen();
      const outcome = intake.add(text);
      if (outcome.ok) put(trackId, intake);
      return outcome;
    },
    finish: (trackId) => take(trackId)?.finish() ?? notOpen(),
    drop: (trackId) => take(trackId) !== undefined,
  };
}

function notOpen(): ReturnType<typeof failure> {
  return failure('not-found', 'That track is no longer being read: choose the file again.');
}

function dropWaiting(open: Map<string, OpenTrack>, sinceMs: number): void {
  for (const [trackId, { lastPartMs }] of open) if (lastPartMs < sinceMs) open.delete(trackId);
}

function dropOldest(open: Map<string, OpenTrack>, most: number): void {
  for (const trackId of open.keys()) {
    if (open.size <= most) return;
    open.delete(trackId);
  }
}
