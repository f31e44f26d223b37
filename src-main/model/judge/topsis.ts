/** One criterion of the choice: what it counts, and which way is better. Weights need not add up to 1. */
export interface TopsisColumn {
  readonly weight: number;
  readonly better: 'lower' | 'higher';
}

/** Distances below this share of the whole are rounding. */
const sameDistance = 1e-12;

/**
 * TOPSIS (Hwang & Yoon 1981, Multiple Attribute Decision Making, Springer LNEMS 186): each column is divided by its Euclidean
 * norm and weighted; a row's closeness is its distance from the worst of each column over the sum of its distances from the
 * worst and from the best, 0 (all the worst) to 1 (all the best).
 *
 * Unlike a score on fixed scales it looks at the other rows, so that adding one may reorder the rest, and its first need not be
 * the row nearest to the best (Pavic & Novoselac 2013, IJRES 1(2):5-12).
 *
 * A column of zeros tells nothing apart and counts nothing. A value that is no number is taken for the worst of its column.
 * Where nothing tells the rows apart (equal rows, one row, no weight), each is the best there is: closeness 1.
 *
 * @param rows a value for each column, in its own unit
 * @returns the closeness of each row, 0..1
 */
export function topsis(
  rows: readonly (readonly number[])[],
  columns: readonly TopsisColumn[],
): readonly number[] {
  const weightSum = columns.reduce((sum, { weight }) => sum + weight, 0);
  const gains = columns.map((column, place) =>
    columnGains(
      rows.map((row) => row[place] ?? NaN),
      { ...column, weight: weightSum === 0 ? 0 : column.weight / weightSum },
    ),
  );
  const best = gains.map((gain) => Math.max(...gain));
  const worst = gains.map((gain) => Math.min(...gain));
  return rows.map((_, index) => {
    const own = gains.map((gain) => gain[index]!);
    return closeness(distance(own, best), distance(own, worst));
  });
}

/** The weighted, normalised column, turned so that more is better. */
function columnGains(values: readonly number[], { weight, better }: TopsisColumn): readonly number[] {
  const sign = better === 'lower' ? -1 : 1;
  const turned = values.map((value) => sign * value);
  const finite = turned.filter(Number.isFinite);
  const worstKnown = finite.length === 0 ? 0 : Math.min(...finite);
  const known = turned.map((value) => (Number.isFinite(value) ? value : worstKnown));
  const norm = Math.hypot(...known);
  return known.map((value) => (norm === 0 ? 0 : (weight * value) / norm));
}

function distance(a: readonly number[], b: readonly number[]): number {
  return Math.hypot(...a.map((value, place) => value - b[place]!));
}

function closeness(fromBest: number, fromWorst: number): number {
  const whole = fromBest + fromWorst;
  return whole <= sameDistance ? 1 : fromWorst / whole;
}
