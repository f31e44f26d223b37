import type { Cost, CriterionValues, Mass } from '../../shared-types/comparison.ts';
import { toMajor } from '../../shared-types/money.ts';
import { tourDays, type Tour } from '../../shared-types/tour.ts';
import type { RiddenCourse } from '../model/ride/ride-course.ts';
import { laterMinutes } from './assemble/ride.ts';

/** What the criteria of a scenario are taken from; the rest is as the scorecard has it. */
export interface Judged extends Omit<CriterionValues, 'cost' | 'grams' | 'frontWheelGrams'> {
  readonly cost: Pick<Cost, 'toBuy'>;
  readonly mass: Pick<Mass, 'carriedG' | 'frontWheelG'>;
}

/** The figures of a scenario as the scorecard takes them. */
export function criterionValues({ cost, mass, ...rest }: Judged): CriterionValues {
  return {
    cost: toMajor(cost.toBuy),
    grams: mass.carriedG,
    frontWheelGrams: mass.frontWheelG,
    ...rest,
  };
}

/** How much later a day ends for the mass of a kit and the drag of its hub, min, the mean over the days of a tour. */
export function minutesLostOf(tour: Pick<Tour, 'legs'>, rides: readonly RiddenCourse[]): number {
  const sum = tour.legs.reduce((minutes, leg, index) => {
    const { loaded, on } = rides[index]!;
    return minutes + leg.days * laterMinutes((on ?? loaded).laterShare, leg.ridingHours);
  }, 0);
  return sum / tourDays(tour);
}
