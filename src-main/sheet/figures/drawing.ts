/** A drawing of its own shape, made as wide as it is asked for: SVG 1.1, so that it stays sharp at any size. */
export interface Drawing {
  /** How high it is at a width, pt. */
  readonly heightPt: (widthPt: number) => number;
  readonly svg: (widthPt: number) => string;
}
