/** Radians in one degree. */
export const radPerDeg = Math.PI / 180;

/** Holds a cosine or sine inside -1..1, so that rounding never reaches `acos` or `asin`. */
export function clipUnit(value: number): number {
  return Math.min(1, Math.max(-1, value));
}

/** Turns any angle in degrees into 0..360. */
export function wrapDeg(angleDeg: number): number {
  return ((angleDeg % 360) + 360) % 360;
}
