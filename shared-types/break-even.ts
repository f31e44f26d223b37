import type { EnergyMargin } from './comparison.ts';
import type { Scenario } from './scenario.ts';

/** What a cell of the map comes to: the leader carries the plan, only another scenario does, or none does. */
export type Carrying = 'leader' | 'another' | 'none';

/** One tour of the map: so many days, with a wall after every so many. */
export interface MapCell {
  readonly days: number;
  /** At or above `days` there is no wall on the way. */
  readonly gapDays: number;
  /** The scenario that ranks first; where none carries the plan the nearest, by its margin. null when limits leave none. */
  readonly leaderId: string | null;
  /** Ranks next; null when the leader is alone, or no scenario carries the plan. */
  readonly secondId: string | null;
  /**
   * By how much the leader leads, points of 100; null without a second, and where no score parts them: the second has a figure that
   * the rider called unacceptable or that is not known, the leader has none.
   */
  readonly leadPoints: number | null;
  readonly carrying: Carrying;
  /** Of the leader. */
  readonly margin: Pick<EnergyMargin, 'value' | 'capped'> | null;
}

/** A scenario on the map, with the letter it goes by there. */
export interface MapScenario extends Pick<Scenario, 'id' | 'label' | 'method'> {
  readonly letter: string;
}

/** Which kit wins where, by the length of a tour and the days between its walls. */
export interface BreakEvenMap {
  readonly tourId: string;
  /** Counts from 0. */
  readonly leg: number;
  readonly legLabel: string;
  readonly startDate: string;
  /** Of the rows, ascending. */
  readonly days: readonly number[];
  /** Of the columns, ascending. */
  readonly gapsDays: readonly number[];
  /** Row by row. */
  readonly cells: readonly MapCell[];
  readonly scenarios: readonly MapScenario[];
  /** What the map shows, in a sentence without its full stop. */
  readonly finding: string;
  /** Where the leader changes, a sentence for gaps that are alike. */
  readonly borders: readonly string[];
  /** The map with letters and figures, in lines of equal width. */
  readonly text: string;
  readonly histories: number;
  readonly stepMinutes: number;
  /** Share of the histories that the energy margin is to hold in. */
  readonly confidence: number;
}
