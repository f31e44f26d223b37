/** Coefficients of Abramowitz & Stegun, Handbook of Mathematical Functions (1964), eq. 26.2.17; error below 7.5e-8. */
const p = 0.2316419;
const b1 = 0.31938153;
const b2 = -0.356563782;
const b3 = 1.781477937;
const b4 = -1.821255978;
const b5 = 1.330274429;

/** Share of a standard normal distribution below `z`; 0..1. */
export function normalShareBelow(z: number): number {
  const t = 1 / (1 + p * Math.abs(z));
  const tail =
    (Math.exp(-(z * z) / 2) / Math.sqrt(2 * Math.PI)) * t * (b1 + t * (b2 + t * (b3 + t * (b4 + t * b5))));
  return z >= 0 ? 1 - tail : tail;
}
