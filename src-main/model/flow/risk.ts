import type { FlatRisk } from '../../../shared-types/comparison.ts';

/** Two-sided 95 % point of the standard normal distribution. */
const z95 = 1.959963985;

/**
 * How often something happens, from how often it was seen, with its 95 % interval: the score interval of Wilson (1927),
 * Journal of the American Statistical Association 22:209-212, which holds for rare things and few trials too.
 *
 * @param seen 0..trials
 * @param trials at least 1
 */
export function wilsonInterval(seen: number, trials: number): FlatRisk {
  const share = seen / trials;
  const z2 = z95 * z95;
  const middle = (share + z2 / (2 * trials)) / (1 + z2 / trials);
  const reach =
    (z95 / (1 + z2 / trials)) * Math.sqrt((share * (1 - share)) / trials + z2 / (4 * trials * trials));
  // What was never seen, or always, has no rounding beyond its end.
  return { share, low: seen === 0 ? 0 : middle - reach, high: seen === trials ? 1 : middle + reach };
}
