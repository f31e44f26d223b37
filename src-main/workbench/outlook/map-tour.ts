import { addDays } from '../../../shared-types/dates.ts';
import { daysBefore, type Tour } from '../../../shared-types/tour.ts';

/**
 * The tour of a row of the map: a leg alone, from the day it starts on, stretched or cut to so many days. Day stops, road and
 * riding are as on the leg. A track is ridden once over all of the days, so that any length meets the whole of its road.
 *
 * @param leg counts from 0
 */
export function mapTour(tour: Tour, leg: number, days: number): Tour {
  return {
    ...tour,
    startDate: addDays(tour.startDate, daysBefore(tour, leg)),
    legs: [{ ...tour.legs[leg]!, days }],
  };
}
