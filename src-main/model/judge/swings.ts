/** A figure with everything at base, and with one assumption at its low and at its high. */
export interface OneAtATime {
  readonly base: number;
  readonly low: number;
  readonly high: number;
}

/**
 * One-at-a-time sensitivity: how far one assumption, moved alone from its low to its high, moves a figure.
 *
 * @returns the width in the unit of the figure, 0 or more, and whether the figure has the opposite sign at one of the ends
 */
export function swingOf({ base, low, high }: OneAtATime): {
  readonly width: number;
  readonly changesSign: boolean;
} {
  return {
    width: Math.abs(high - low),
    changesSign: [low, high].some((end) => Math.sign(end) * Math.sign(base) < 0),
  };
}

/** Widest first; equals keep their order. */
export function widestFirst<Row>(rows: readonly Row[], widthOf: (row: Row) => number): readonly Row[] {
  return rows.toSorted((a, b) => widthOf(b) - widthOf(a));
}
