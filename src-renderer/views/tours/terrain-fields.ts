import { trackPace, type TrackPace } from '../../../shared-types/tour.ts';
import type { TrackProfile } from '../../../shared-types/track.ts';
import { shapeOf, type Field } from '../../parts/fields/shape.ts';

const pace = shapeOf('pace', trackPace);

/** How fast a track with times is ridden. */
export const paceFields: readonly Field[] = pace === null ? [] : [{ key: 'pace', shape: pace }];

/** From here on the recorded speeds say more of the ride than the rider's power does, share of the distance. */
const mostRecorded = 0.5;

/** How a track just read is ridden until the rider chooses. */
export function startingPace({ timedShare }: Pick<TrackProfile, 'timedShare'>): TrackPace {
  return timedShare > mostRecorded ? 'recorded' : 'computed';
}
