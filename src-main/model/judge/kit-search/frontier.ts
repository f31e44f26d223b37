import type { PlainFigures } from './kit-space.ts';

/** A kit's four figures; the margin by its rung, so that equal is equal. */
export interface Point extends PlainFigures {
  readonly marginRung: number;
}

/** Whether `a` is at least as good as `b` in all four figures and better in one. */
export function beats(a: Point, b: Point): boolean {
  if (a.marginRung < b.marginRung || !costsNoMore(a, b)) return false;
  return a.marginRung > b.marginRung || costsLess(a, b);
}

/**
 * The best margin, by its rung, among kits that cost and weigh no more than this one and less in something: what it must pass
 * to be worth its place. -Infinity when there is none.
 */
export function barFor(points: readonly Point[], kit: PlainFigures): number {
  let bar = -Infinity;
  for (const point of points)
    if (point.marginRung > bar && costsNoMore(point, kit) && costsLess(point, kit)) bar = point.marginRung;
  return bar;
}

/** Those that no other beats. Equals all stay. */
export function unbeaten<P extends Point>(points: readonly P[]): readonly P[] {
  return points.filter((point) => !points.some((other) => beats(other, point)));
}

function costsNoMore(a: PlainFigures, b: PlainFigures): boolean {
  return a.toBuyMinor <= b.toBuyMinor && a.grams <= b.grams && a.frontWheelGrams <= b.frontWheelGrams;
}

function costsLess(a: PlainFigures, b: PlainFigures): boolean {
  return a.toBuyMinor < b.toBuyMinor || a.grams < b.grams || a.frontWheelGrams < b.frontWheelGrams;
}
