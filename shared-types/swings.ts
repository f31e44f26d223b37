import type { Scenario } from './scenario.ts';

/**
 * How the value of an assumption reads: a factor on the plan, where outlets stand between never (-1), as planned (0) and
 * always (1), days, a share of 1, or a bare number.
 */
export type SwingScale = 'factor' | 'luck' | 'days' | 'share' | 'number';

export type SwungId =
  | 'sun'
  | 'rider-power'
  | 'outlet-luck'
  | 'bank-losses'
  | 'device-use'
  | 'price'
  | 'days-between-walls'
  | 'rack-factor'
  | 'persistence';

/** One end of an assumption, everything else as planned. */
export interface SwingEnd {
  readonly value: number;
  /** By how much the first of the plan leads the second of the plan there, points of 100; below 0 where it trails. */
  readonly leadPoints: number;
  /** The scenario that ranks first there; null where limits leave out all. */
  readonly leaderId: string | null;
}

/**
 * Where the first of the plan gives up its place: the first such value on one side of the plan, as far as the values tried tell
 * (an order that changes and changes back between two of them is not seen).
 */
export interface Flip {
  /** `at`: the plan is no point of the range, and its nearest like has another first already. */
  readonly side: 'below' | 'at' | 'above';
  /** The value tried at which another leads; a value that keeps the order lies a fiftieth of the range or a day nearer. */
  readonly value: number;
  /** null where limits leave out all. */
  readonly leaderId: string | null;
  /** What other than the score turns it: a limit or a mark, a clause about the scenarios by name; null when the score does. */
  readonly because: string | null;
}

/** How far one assumption, moved alone, moves the lead of the first over the second. */
export interface Swing {
  readonly id: SwungId;
  readonly name: string;
  readonly scale: SwingScale;
  /** Where its low and high are from. */
  readonly source: string;
  /** null where the plan is no point of the range. */
  readonly base: number | null;
  readonly low: SwingEnd;
  readonly high: SwingEnd;
  /** The change of the lead from the low to the high end, points of 100, 0 or more. */
  readonly widthPoints: number;
  /** The lead has another sign at one of the ends than at the plan: by score alone, the two change places. */
  readonly changesSign: boolean;
  /** Those nearest to the plan, at most one a side; none where the first keeps its place at all values tried. */
  readonly flips: readonly Flip[];
}

/** What would change the answer: every assumption moved alone from its low to its high. */
export interface Swings {
  readonly tourId: string;
  readonly scenarios: readonly Pick<Scenario, 'id' | 'label' | 'method'>[];
  /** Of the plan. */
  readonly firstId: string;
  readonly secondId: string;
  readonly leadPoints: number;
  /** The two share the first place at the plan: there is no order to change, and no flip is looked for. */
  readonly level: boolean;
  /** Widest first. */
  readonly swings: readonly Swing[];
  /** Assumptions that nothing compared here rests on. */
  readonly leftOut: readonly { readonly name: string; readonly why: string }[];
  readonly histories: number;
}
