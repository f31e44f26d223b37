import type { Estimate } from './likelihood-interval.ts';

/**
 * Ratio of two values estimated apart, with its interval at their level, from the distances of each value to its own bounds
 * (Zou & Donner 2008, Statistics in Medicine 27:1693-1702, applied to the logarithms). Distances may differ up and down, as
 * those from lights do.
 *
 * @param above and below: with low, value and high above 0
 */
export function ratioOf(above: Estimate, below: Estimate): Estimate {
  const value = above.value / below.value;
  const down = Math.hypot(Math.log(above.value / above.low), Math.log(below.high / below.value));
  const up = Math.hypot(Math.log(above.high / above.value), Math.log(below.value / below.low));
  return { value, low: value * Math.exp(-down), high: value * Math.exp(up) };
}
