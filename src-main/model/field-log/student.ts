const halvings = 60;
/** No level in use has a point further out, not even with one degree of freedom. */
const furthest = 1e6;

/**
 * Share of Student's law between -t and t, by the finite series 26.7.3 (odd degrees of freedom) and 26.7.4 (even) of
 * Abramowitz & Stegun 1964.
 *
 * @param degrees of freedom: 1, 2, ...
 */
function shareWithin(t: number, degrees: number): number {
  const angle = Math.atan(t / Math.sqrt(degrees));
  const square = Math.cos(angle) ** 2;
  const isOdd = degrees % 2 === 1;
  let term = isOdd ? Math.cos(angle) : 1;
  let sum = 0;
  for (let at = isOdd ? 1 : 0; at <= degrees - 2; at += 2) {
    sum += term;
    term *= (square * (at + 1)) / (at + 2);
  }
  return isOdd ? (2 / Math.PI) * (angle + Math.sin(angle) * sum) : Math.sin(angle) * sum;
}

/**
 * Two-sided point of Student's law: what holds a mean of `degrees + 1` readings within so many of its standard deviations
 * at this level (JCGM 100:2008, GUM, table G.2).
 *
 * @param level share between, above 0 and below 1
 */
export function studentPoint(level: number, degrees: number): number {
  let [low, high] = [0, furthest];
  for (let at = 0; at < halvings; at += 1) {
    const middle = (low + high) / 2;
    if (shareWithin(middle, degrees) < level) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
