import type { PairedMargin } from '../../../shared-types/upgrade.ts';
import { allowedFailures, largestUseFactor } from '../flow/margin.ts';
import { percentile } from '../percentile.ts';
import { randomStreams, uniform } from '../random.ts';

const resamples = 1000;
/** Fixed, so that the same question always has the same answer. */
const seed = 20_261;
const [lowShare, highShare] = [0.025, 0.975];

/**
 * The difference of two energy margins with its 95 % interval, by the paired bootstrap over histories (Efron 1979, Annals of
 * Statistics 7:1-26; percentile method): each resample draws whole histories, so that what both kits owe to the same weather
 * cancels out. An order statistic moves in jumps, and its percentiles may miss the figure itself: the interval is widened to
 * hold it.
 *
 * @param before each history's own largest factor of use carried, at least one history
 * @param after the same histories with the change
 * @param confidence share of the histories that must carry a margin, 0..1
 */
export function pairedMargin(before: Float64Array, after: Float64Array, confidence: number): PairedMargin {
  if (before.length === 0 || before.length !== after.length)
    throw new Error(`Histories cannot be paired: ${before.length} before, ${after.length} after.`);
  const allowed = allowedFailures(before.length, confidence);
  const [first, second] = [ascending(before), ascending(after)];
  const once = new Int32Array(before.length).fill(1);
  const [factorBefore, factorAfter] = [carried(first, once, allowed), carried(second, once, allowed)];
  const difference = factorAfter - factorBefore;
  const drawn = differencesOf(first, second, allowed);
  return {
    before: factorBefore - 1,
    after: factorAfter - 1,
    cappedBefore: factorBefore >= largestUseFactor,
    cappedAfter: factorAfter >= largestUseFactor,
    difference,
    low: Math.min(difference, percentile(drawn, lowShare)),
    high: Math.max(difference, percentile(drawn, highShare)),
  };
}

/** The factors of the histories, and the histories in ascending order of them; in none where one factor is not known. */
interface Ascending {
  readonly factors: Float64Array;
  readonly order: Int32Array;
}

function ascending(factors: Float64Array): Ascending {
  if (factors.some(Number.isNaN)) return { factors, order: new Int32Array() };
  const order = Int32Array.from(factors.keys()).sort((a, b) => factors[a]! - factors[b]!);
  return { factors, order };
}

/** The factor that all but `allowed` carry, of histories that each come so many times. */
function carried({ factors, order }: Ascending, times: Int32Array, allowed: number): number {
  let passed = 0;
  for (const history of order) {
    passed += times[history]!;
    if (passed > allowed) return factors[history]!;
  }
  return Number.NaN;
}

/** Of resampled histories, rising. */
function differencesOf(first: Ascending, second: Ascending, allowed: number): Float64Array {
  const histories = first.factors.length;
  const stream = randomStreams(seed).next().value;
  const times = new Int32Array(histories);
  const difference = (): number => {
    times.fill(0);
    for (let draw = 0; draw < histories; draw += 1) times[Math.floor(uniform(stream) * histories)]! += 1;
    return carried(second, times, allowed) - carried(first, times, allowed);
  };
  return new Float64Array(resamples).map(difference).sort();
}
