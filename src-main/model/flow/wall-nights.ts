import type { NightKind } from '../../../shared-types/tour.ts';

/** The nights of a tour with a wall after every so many days, counted from its start. */
export function wallEvery(gapDays: number, nights: number): readonly NightKind[] {
  return Array.from({ length: nights }, (_, night) => ((night + 1) % gapDays === 0 ? 'wall' : 'none'));
}

/** How many such nights lie before the last day of a tour; what comes after it charges nothing for the tour. */
export function wallNightsBefore(days: number, gapDays: number): number {
  return Math.floor((days - 1) / gapDays);
}
