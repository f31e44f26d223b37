import { daysBefore, nightOf, type NightKind, type Tour } from '../../shared-types/tour.ts';

/** A tour with one more night with a wall. */
export interface OneMoreWall {
  readonly tour: Tour;
  /** Days of the tour before that night. */
  readonly afterDay: number;
}

/**
 * Puts one more night with a wall where it is missed most: in the middle of the longest stretch without. null when every night
 * before the last day has one.
 */
export function withOneMoreWall(tour: Tour): OneMoreWall | null {
  const nights = nightsOf(tour);
  // The night after the last day charges nothing for the tour.
  const afterDay = middleOfLongestGap(nights.slice(0, -1));
  if (afterDay === null) return null;
  const kinds = nights.with(afterDay - 1, 'wall');
  return {
    afterDay,
    tour: {
      ...tour,
      legs: tour.legs.map((leg, index) => {
        const from = daysBefore(tour, index);
        return { ...leg, nights: { ...leg.nights, by: 'list', kinds: kinds.slice(from, from + leg.days) } };
      }),
    },
  };
}

function nightsOf({ legs }: Pick<Tour, 'legs'>): readonly NightKind[] {
  return legs.flatMap(({ days, nights }) =>
    Array.from({ length: days }, (_, night) => nightOf(nights, night)),
  );
}

/** The middle night of the longest run without a wall, counted from 1; null when there is none. */
function middleOfLongestGap(nights: readonly NightKind[]): number | null {
  let [longest, from, middle] = [0, 0, 0];
  nights.forEach((night, at) => {
    if (night !== 'none') from = at + 1;
    else if (at + 1 - from > longest) {
      longest = at + 1 - from;
      middle = from + Math.ceil(longest / 2);
    }
  });
  return longest === 0 ? null : middle;
}
