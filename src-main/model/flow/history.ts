import type { Timeline } from './timeline.ts';

/** One drawn course of weather and outlets over a tour. */
export interface History {
  /** Clearness of each day, global over extraterrestrial. */
  readonly clearness: Float64Array;
  /** For each draw of outlet luck: the share of the stop with a free outlet, 0..1. */
  readonly outletShare: Float64Array;
}

/**
 * The mean history: every day has its month's mean clearness, every doubtful outlet is there for its share of the time.
 * Margins from it are middle values, with no risk in them.
 */
export function meanHistory(timeline: Timeline, clearnessOfDay: (day: number) => number): History {
  return {
    clearness: Float64Array.from({ length: timeline.days }, (_, day) => clearnessOfDay(day)),
    outletShare: Float64Array.from(timeline.luckChance),
  };
}
