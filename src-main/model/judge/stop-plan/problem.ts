import { slotHours, type Grid } from './grid.ts';
import { levelsOf, type Levels } from './levels.ts';
import type { Plugs } from './plugs.ts';
import type { StopStore } from './situation.ts';

/** A stop on a grid: what the search looks through. */
export interface StopProblem {
  readonly stores: readonly StopStore[];
  readonly plugs: Plugs;
  /** Length of each slot, h. */
  readonly hours: readonly number[];
  /** By slot, and at last at the end: hours that are left, h. */
  readonly hoursLeft: readonly number[];
  readonly levels: readonly Levels[];
  /** Levels of the stores at the beginning. */
  readonly start: readonly number[];
}

/** @param stores in the order of service, as in `plugs` */
export function problemOf(stores: readonly StopStore[], plugs: Plugs, grid: Grid): StopProblem {
  const hours = slotHours(grid);
  const levels = stores.map(levelsOf);
  return {
    stores,
    plugs,
    hours,
    hoursLeft: hours.map((_, slot) => sum(hours.slice(slot))).concat(0),
    levels,
    start: stores.map(({ storedWh }, place) => levels[place]!.numberOf(storedWh)),
  };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

/** What stores of these levels hold, Wh. */
export function storedAt({ levels }: StopProblem, state: readonly number[]): number[] {
  return state.map((level, store) => levels[store]!.wh[level]!);
}

/** What the stores hold as the rider stops, Wh. */
export function storedNow(stores: readonly StopStore[]): number[] {
  return stores.map(({ storedWh }) => storedWh);
}
