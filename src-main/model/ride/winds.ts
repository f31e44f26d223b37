import type { Wind } from '../../../shared-types/tour.ts';
import { msPerKmh } from './solve-speed.ts';

/** A share of the distance with one wind along the road, m/s, against the rider above 0. */
export interface WindShare {
  readonly headwindMs: number;
  readonly share: number;
}

/**
 * Wind across the road costs nothing here: the balance of Martin et al. takes the part along the road, and no yaw of a loaded
 * bicycle is published.
 *
 * A wind from all sides alike: the part along the road from eight directions, those that agree together.
 */
const directions: readonly { readonly alongShare: number; readonly share: number }[] = [
  { alongShare: 1, share: 1 / 8 },
  { alongShare: Math.SQRT1_2, share: 1 / 4 },
  { alongShare: 0, share: 1 / 4 },
  { alongShare: -Math.SQRT1_2, share: 1 / 4 },
  { alongShare: -1, share: 1 / 8 },
];

/** The winds along the road of a leg; their shares add up to 1. */
export function windsOf(wind: Wind): readonly WindShare[] {
  if (wind.as === 'around' && wind.windKmh > 0) {
    return directions.map(({ alongShare, share }) => ({
      headwindMs: wind.windKmh * msPerKmh * alongShare,
      share,
    }));
  }
  return [{ headwindMs: wind.as === 'along' ? wind.headwindKmh * msPerKmh : 0, share: 1 }];
}
