import type { Handlers } from '../../../shared-types/contract.ts';
import { failure, success } from '../../../shared-types/outcome.ts';
import type { TrackProfile } from '../../../shared-types/track.ts';
import { trackOf } from '../../support/track-fixture.ts';

type TrackCalls = Pick<Handlers, 'tracks.begin' | 'tracks.add' | 'tracks.finish' | 'tracks.drop'>;

const noTrack = failure('not-found', 'No track of this id is being taken in.');

const shares = [0.05, 0.1, 0.2, 0.3, 0.2, 0.1, 0.05];

/** Over a pass in two halves that are alike, without times. */
function passTrack(name: string): TrackProfile {
  const half = shares.map((share, place) => ({ gradePct: 2 * place - 6, speedKmh: null, share }));
  return { ...trackOf([half, half]), name, distanceKm: 412.3, ascentM: 5230, descentM: 4980 };
}

/** Takes tracks in part by part; any text with a GPX element in it becomes the same invented track. */
export function fakeTracks(): TrackCalls {
  const coming = new Map<string, { readonly name: string; text: string }>();
  let begun = 0;
  return {
    'tracks.begin': ({ name }) => {
      const trackId = `track-${++begun}`;
      coming.set(trackId, { name, text: '' });
      return success({ trackId });
    },
    'tracks.add': ({ trackId, text }) => {
      const track = coming.get(trackId);
      if (track === undefined) return noTrack;
      track.text += text;
      return success({ points: track.text.split('<trkpt').length - 1 });
    },
    'tracks.finish': ({ trackId }) => {
      const track = coming.get(trackId);
      coming.delete(trackId);
      if (track === undefined) return noTrack;
      const { name, text } = track;
      return text.includes('<gpx')
        ? success(passTrack(name))
        : failure('unreadable', `${name} is not a GPX track.`);
    },
    'tracks.drop': ({ trackId }) => success({ dropped: coming.delete(trackId) }),
  };
}
