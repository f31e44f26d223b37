import { percent, wordsLocale } from './figures.ts';
import type { TrackPace } from './tour.ts';
import type { TrackProfile } from './track.ts';

/** Below this a share would be written as 0 %, and as far from the whole as 100 %. */
const smallestWritten = 0.005;

type NotedTrack = Pick<TrackProfile, 'heightShare' | 'heightsM' | 'timedShare'>;

/** What to know of a track of which heights, times or more are missing, when it is ridden at this pace. */
export function trackNotes(track: NotedTrack, pace: TrackPace): readonly string[] {
  if (track.heightShare > 0 && track.heightsM.length === 0) return [fromEarlierVersion];
  return [...heightNotes(track, pace), ...speedNotes(track)];
}

/** Only the shares of grades were kept then. */
const fromEarlierVersion =
  'This track was taken in by an earlier version, so its days are all alike: choose its file again for its profile and speeds.';

function heightNotes({ heightShare, timedShare }: NotedTrack, pace: TrackPace): readonly string[] {
  if (heightShare === 0) {
    const slopes = unknownSlopes(pace === 'recorded' ? timedShare : 0);
    return [`This track carries no heights, or too few: ${slopes}.`];
  }
  if (heightShare === 1) return [];
  const sentence = `${shareText(1 - heightShare)} of its points carry no height: the slope there runs straight between those that do.`;
  return [sentence.charAt(0).toUpperCase() + sentence.slice(1)];
}

/** A recorded speed has its slope in it, so there the class has no say. */
function unknownSlopes(recordedShare: number): string {
  if (recordedShare === 0) return 'slopes come from the terrain class';
  if (recordedShare > 1 - smallestWritten) return 'it is taken as level';
  return 'it is taken as level where a speed is recorded, and elsewhere slopes come from the terrain class';
}

/** A stop takes a few metres out of a recorded ride; that much needs no note. */
function speedNotes({ timedShare }: NotedTrack): readonly string[] {
  if (timedShare === 0) return ['This track carries no recorded speeds: it is ridden at your power.'];
  if (timedShare > 1 - smallestWritten) return [];
  return [
    `This track carries recorded speeds on ${shareText(timedShare)} of its distance; the rest is ridden at your power.`,
  ];
}

function shareText(share: number): string {
  if (share < smallestWritten) return `less than ${percent(0.01, { locale: wordsLocale })}`;
  if (share >= 1 - smallestWritten) return 'nearly all';
  return percent(share, { locale: wordsLocale });
}
