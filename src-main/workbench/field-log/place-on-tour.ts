import type { OnTour } from '../../../shared-types/field-log.ts';
import type { Settings } from '../../../shared-types/settings.ts';
import { tourDays, type Tour } from '../../../shared-types/tour.ts';
import { timelineOf } from '../assemble/tour.ts';

/** Which day of a tour it is. */
export interface PlaceOnTour {
  readonly day: number;
  readonly tourDays: number;
  /** How it is known: the rider said so, the date did, or neither and the first day stands in. */
  readonly by: 'rider' | 'date' | 'none';
}

const dayMs = 86_400_000;

/** @returns null when the day named is not one of the tour */
export function placeOnTour(tour: Tour, asked: number | null, today: string): PlaceOnTour | null {
  const days = tourDays(tour);
  if (asked !== null) return asked <= days ? { day: asked, tourDays: days, by: 'rider' } : null;
  const since = Math.round((Date.parse(today) - Date.parse(tour.startDate)) / dayMs) + 1;
  return since >= 1 && since <= days
    ? { day: since, tourDays: days, by: 'date' }
    : { day: 1, tourDays: days, by: 'none' };
}

/**
 * The next night with a certain outlet that begins after a step: one the rider is in already is not the next. Day stops are
 * not counted on.
 */
export function nextWall(
  tour: Tour,
  { stepMinutes }: Pick<Settings, 'stepMinutes'>,
  from: number,
): OnTour['wall'] {
  const { steps, stepsPerDay, outlets, luck } = timelineOf(tour, Number(stepMinutes));
  const isWall = (step: number): boolean => outlets[step]! > 0 && luck[step]! < 0;
  let step = from;
  while (step < steps && isWall(step)) step += 1;
  while (step < steps && !isWall(step)) step += 1;
  return step === steps
    ? null
    : { inDays: (step - from) / stepsPerDay, day: Math.floor(step / stepsPerDay) + 1 };
}
