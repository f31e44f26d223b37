import { daysBefore, tourDays, type Tour } from '../../shared-types/tour.ts';
import { wallEvery } from '../model/flow/wall-nights.ts';

/** The tour with a room with a wall after every so many days and nowhere else at night; its day stops stay. */
export function withWallEvery(tour: Tour, gapDays: number): Tour {
  const nights = wallEvery(gapDays, tourDays(tour));
  return {
    ...tour,
    legs: tour.legs.map((leg, index) => {
      const from = daysBefore(tour, index);
      const kinds = nights.slice(from, from + leg.days);
      return { ...leg, nights: { ...leg.nights, by: 'list', kinds } };
    }),
  };
}
