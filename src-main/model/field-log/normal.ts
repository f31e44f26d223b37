/** Half the logarithm of a full turn: what the standard normal density is scaled by. */
const halfLogTwoPi = Math.log(2 * Math.PI) / 2;
/** Below it the series of the law is exact to all digits, above it the continued fraction. */
const tailFrom = 3;
const fractionTerms = 30;
const negligible = 1e-17;

/**
 * Logarithm of the share of a standard normal law above z: by the series 26.2.11 of Abramowitz & Stegun 1964, Handbook of
 * Mathematical Functions, and far out by its continued fraction 26.2.14. As a logarithm it does not vanish, however far out.
 *
 * @param z 0 or more
 */
function logUpperTail(z: number): number {
  if (z === Infinity) return -Infinity;
  const logDensity = -(z * z) / 2 - halfLogTwoPi;
  if (z < tailFrom) return Math.log(0.5 - Math.exp(logDensity) * oddSeries(z));
  let fraction = z;
  for (let term = fractionTerms; term >= 1; term -= 1) fraction = z + term / fraction;
  return logDensity - Math.log(fraction);
}

function oddSeries(z: number): number {
  let [term, sum] = [z, z];
  for (let odd = 3; term > sum * negligible; odd += 2) {
    term *= (z * z) / odd;
    sum += term;
  }
  return sum;
}

/**
 * Logarithm of the share of a standard normal law between two values.
 *
 * @param low below `high`; either may be infinite
 */
export function logShareBetween(low: number, high: number): number {
  if (low < 0 && high > 0) {
    return Math.log1p(-Math.exp(logUpperTail(-low)) - Math.exp(logUpperTail(high)));
  }
  const [near, far] = high <= 0 ? [-high, -low] : [low, high];
  const logNear = logUpperTail(near);
  return logNear + Math.log(-Math.expm1(logUpperTail(far) - logNear));
}
