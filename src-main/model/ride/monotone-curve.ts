/** A point of a curve. */
export interface CurvePoint {
  readonly x: number;
  readonly y: number;
}

/**
 * A smooth curve through points that rises and falls only where they do: piecewise cubic, its slope at a point the weighted
 * harmonic mean of those beside it, and level where the points turn (Fritsch & Butland 1984, SIAM J. Sci. Stat. Comput.
 * 5:300-304). Level outside the points.
 *
 * @param points one or more, x rising
 */
export function monotoneCurve(points: readonly CurvePoint[]): (x: number) => number {
  const slopes = points.map((_, index) => slopeAt(points, index));
  return (x) => {
    const after = points.findIndex((point) => x < point.x);
    if (after < 0) return points.at(-1)!.y;
    if (after === 0) return points[0]!.y;
    return cubic(x, points[after - 1]!, points[after]!, slopes[after - 1]!, slopes[after]!);
  };
}

/** Hermite cubic between two points. */
function cubic(x: number, from: CurvePoint, to: CurvePoint, slopeFrom: number, slopeTo: number): number {
  const span = to.x - from.x;
  const t = (x - from.x) / span;
  const rest = 1 - t;
  return (
    rest ** 2 * ((1 + 2 * t) * from.y + t * span * slopeFrom) +
    t ** 2 * ((1 + 2 * rest) * to.y - rest * span * slopeTo)
  );
}

function slopeAt(points: readonly CurvePoint[], index: number): number {
  const before = chord(points, index - 1);
  const after = chord(points, index);
  if (before === null || after === null) return endSlope(points, index);
  if (before.slope * after.slope <= 0) return 0;
  const weightBefore = before.span + 2 * after.span;
  const weightAfter = 2 * before.span + after.span;
  return (weightBefore + weightAfter) / (weightBefore / before.slope + weightAfter / after.slope);
}

/** At an end the slope of the only chord keeps the cubic between its points. */
function endSlope(points: readonly CurvePoint[], index: number): number {
  return (chord(points, index) ?? chord(points, index - 1))?.slope ?? 0;
}

function chord(
  points: readonly CurvePoint[],
  index: number,
): { readonly span: number; readonly slope: number } | null {
  const from = points[index];
  const to = points[index + 1];
  if (from === undefined || to === undefined) return null;
  const span = to.x - from.x;
  return { span, slope: (to.y - from.y) / span };
}
