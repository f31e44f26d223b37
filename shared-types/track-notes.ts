import { percent, wordsLocale } from './figures.ts';
import type { TrackProfile } from './track.ts';

/** Below this a share would be written as 0 %. */
const smallestWritten = 0.005;

/** What to know of a track of which heights, times or more are missing. */
export function trackNotes({
  heightShare,
  heightsM,
  timedShare,
}: Pick<TrackProfile, 'heightShare' | 'heightsM' | 'timedShare'>): readonly string[] {
  if (heightShare > 0 && heightsM.length === 0) return [fromEarlierVersion];
  return [...heightNotes(heightShare), ...speedNotes(timedShare)];
}

/** Only the shares of grades were kept then. */
const fromEarlierVersion =
  'This track was taken in by an earlier version, so its days are all alike: choose its file again for its profile and speeds.';

function heightNotes(heightShare: number): readonly string[] {
  if (heightShare === 0) return ['This track carries no heights: slopes come from the terrain class.'];
  if (heightShare === 1) return [];
  const sentence = `${shareText(1 - heightShare)} of its points carry no height: the slope there runs straight between those that do.`;
  return [sentence.charAt(0).toUpperCase() + sentence.slice(1)];
}

/** A stop takes a few metres out of a recorded ride; that much needs no note. */
function speedNotes(timedShare: number): readonly string[] {
  if (timedShare === 0) return ['This track carries no recorded speeds: it is ridden at your power.'];
  if (timedShare > 1 - smallestWritten) return [];
  return [
    `This track carries recorded speeds on ${shareText(timedShare)} of its distance; the rest is ridden at your power.`,
  ];
}

function shareText(share: number): string {
  if (share < smallestWritten) return `less than ${percent(0.01, { locale: wordsLocale })}`;
  return percent(share, { locale: wordsLocale });
}
