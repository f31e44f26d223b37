import { activities, type Activity } from '../storage/device.ts';

/** The rider's day, clock hours (common practice, no source). */
export const wakesAt = 7;
export const ridesFrom = 8;
export const eveningFrom = 18;
export const bedtime = 22;

/** What a step is like is sampled this finely, so that coarse steps lose no part of a stop, min. */
export const sampleMinutes = 5;

/** A stop between two stretches of riding. */
export interface StopPlan {
  readonly hours: number;
  readonly outlets: number;
  /** How often the outlet is really there, 0..1. */
  readonly chance: number;
}

/** What a step of the day is like. `stop` is the index of the day stop, -1 away from stops. */
export interface DayPart {
  readonly activity: Activity;
  readonly stop: number;
  /** Before the day's ride or after it: in camp or in a room. */
  readonly inCamp: boolean;
}

/**
 * What the rider does at a clock hour. Riding starts at 8 and is parted into equal stretches by the day's stops; after it
 * comes camp (counted as a stop until 18 h, evening until 22 h), then night until 7 h and an hour of camp.
 *
 * @param hour 0..24
 * @param ridingHours riding with stops must end by 22 h
 */
export function partAt(
  hour: number,
  ridingHours: number,
  stops: readonly Pick<StopPlan, 'hours'>[],
): DayPart {
  const camp = (activity: Activity): DayPart => ({ activity, stop: -1, inCamp: true });
  if (hour < wakesAt || hour >= bedtime) return camp('night');
  if (hour < ridesFrom) return camp('stop');
  const stretch = ridingHours / (stops.length + 1);
  let at = ridesFrom;
  for (const [index, stop] of stops.entries()) {
    at += stretch;
    if (hour < at) return { activity: 'riding', stop: -1, inCamp: false };
    at += stop.hours;
    if (hour < at) return { activity: 'stop', stop: index, inCamp: false };
  }
  if (hour < at + stretch) return { activity: 'riding', stop: -1, inCamp: false };
  return camp(hour < eveningFrom ? 'stop' : 'evening');
}

/** Index of an activity in the use table. */
export function activityIndex(activity: Activity): number {
  return activities.indexOf(activity);
}
