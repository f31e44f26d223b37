/** A value with the interval that holds it. */
export interface Estimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

const goldenShare = (Math.sqrt(5) - 1) / 2;
const goldenSteps = 24;
const halvings = 24;
const mostDoublings = 60;
/** Values whose log-likelihoods differ by less than this fit equally well. */
const asGood = 1e-6;

/** Where a function with one hill is highest between two places. */
export function highestBetween(height: (at: number) => number, low: number, high: number): number {
  let [left, right] = [low, high];
  let inner = right - goldenShare * (right - left);
  let outer = left + goldenShare * (right - left);
  let [innerHeight, outerHeight] = [height(inner), height(outer)];
  for (let step = 0; step < goldenSteps; step += 1) {
    if (innerHeight >= outerHeight) {
      [right, outer, outerHeight] = [outer, inner, innerHeight];
      inner = right - goldenShare * (right - left);
      innerHeight = height(inner);
    } else {
      [left, inner, innerHeight] = [inner, outer, outerHeight];
      outer = left + goldenShare * (right - left);
      outerHeight = height(outer);
    }
  }
  return (left + right) / 2;
}

/**
 * The interval of all values whose log-likelihood lies at most `drop` below the highest (Meeker & Escobar 1998, Statistical
 * Methods for Reliability Data, section 8.2; half the point of chi-squared with one degree of freedom is their drop for many
 * observations). Where several values fit best the middle of them is taken.
 *
 * @param logLikelihood has one hill, whose top lies between `low` and `high`, and falls without end beyond them
 */
export function likelihoodInterval(
  logLikelihood: (value: number) => number,
  { low, high }: { readonly low: number; readonly high: number },
  drop: number,
): Estimate {
  const best = highestBetween(logLikelihood, low, high);
  const top = logLikelihood(best);
  const reach = high - low;
  const edge = (direction: -1 | 1, below: number): number =>
    edgeFrom(best, direction * reach, (value) => logLikelihood(value) >= top - below);
  return { value: (edge(-1, asGood) + edge(1, asGood)) / 2, low: edge(-1, drop), high: edge(1, drop) };
}

/** How far from a place, in steps that double, a condition still holds; found by halving. */
function edgeFrom(place: number, firstStep: number, holds: (value: number) => boolean): number {
  let [inside, step] = [place, firstStep];
  for (let at = 0; at < mostDoublings && holds(place + step); at += 1) {
    inside = place + step;
    step *= 2;
  }
  let outside = place + step;
  for (let at = 0; at < halvings; at += 1) {
    const middle = (inside + outside) / 2;
    if (holds(middle)) inside = middle;
    else outside = middle;
  }
  return inside;
}
