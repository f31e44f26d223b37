import type { Handlers } from '../../../shared-types/contract.ts';
import { success } from '../../../shared-types/outcome.ts';
import type { TrackDesk } from '../track-intake/track-desk.ts';

/** The calls that take in a GPX track part by part. */
export function trackCalls(
  desk: TrackDesk,
): Pick<Handlers, 'tracks.begin' | 'tracks.add' | 'tracks.finish' | 'tracks.drop'> {
  return {
    'tracks.begin': ({ name }) => success({ trackId: desk.begin(name) }),
    'tracks.add': ({ trackId, text }) => desk.add(trackId, text),
    'tracks.finish': ({ trackId }) => desk.finish(trackId),
    'tracks.drop': ({ trackId }) => success({ dropped: desk.drop(trackId) }),
  };
}
