/*
 * How the clearness of single days spreads about its monthly mean (Bendt, Collares-Pereira & Rabl 1981, Solar Energy
 * 27:1-5): density falling or rising exponentially between the dullest and the clearest day.
 */

/** Clearness of the dullest day (Bendt et al. 1981). */
export const dullestClearness = 0.05;

/** Means for which Hollands & Huget fitted their clearest day; outside, the edge's value holds. */
const huget = { from: 0.2, to: 0.8 } as const;

/** Clearness of the clearest day of a month (Hollands & Huget 1983, Solar Energy 30:195-209). */
export function clearestDay(meanClearness: number): number {
  const mean = Math.min(huget.to, Math.max(huget.from, meanClearness));
  return 0.6313 + 0.267 * mean - 11.9 * (mean - 0.75) ** 8;
}

/** The distribution of one day: clearness between two ends, `gamma` bending it towards the clear end where positive. */
export interface ClearnessDistribution {
  readonly dullest: number;
  readonly clearest: number;
  readonly gamma: number;
}

/** Herzog's approximation of gamma (as in Duffie & Beckman, eq. 2.9.6), a few per cent from the exact value. */
export function herzogGamma(mean: number, dullest: number, clearest: number): number {
  const x = (clearest - dullest) / (clearest - mean);
  return -1.498 + (1.184 * x - 27.182 * Math.exp(-1.5 * x)) / (clearest - dullest);
}

/** Below this bend the distribution is level to rounding. */
const levelGamma = 1e-6;

/** Mean of the distribution. */
export function meanClearness({ dullest, clearest, gamma }: ClearnessDistribution): number {
  if (Math.abs(gamma) < levelGamma) return (dullest + clearest) / 2;
  const width = clearest - dullest;
  // Written from the end that the bend favours, so that no exponential overflows.
  return gamma > 0
    ? clearest - 1 / gamma + width / Math.expm1(gamma * width)
    : dullest - 1 / gamma - width / Math.expm1(-gamma * width);
}

/**
 * The clearness that a share of days does not reach.
 *
 * @param share 0..1
 */
export function clearnessAt({ dullest, clearest, gamma }: ClearnessDistribution, share: number): number {
  const width = clearest - dullest;
  if (Math.abs(gamma) < levelGamma) return dullest + share * width;
  return gamma > 0
    ? clearest + Math.log(share + (1 - share) * Math.exp(-gamma * width)) / gamma
    : dullest + Math.log1p(share * Math.expm1(gamma * width)) / gamma;
}

/** Where mean and end come closer than this every day is like the mean. */
const leastSpread = 0.005;
/** Bend beyond which the distribution is a spike. */
const steepestGamma = 2000;
const halvings = 60;

/**
 * The distribution whose mean is the given one exactly: Herzog's gamma is a little off, which would move a month's mean.
 *
 * @param mean monthly mean clearness
 * @param most bound of any day, such as a cloudless sky; a mean above it is held at it
 */
export function distributionOf(mean: number, most: number): ClearnessDistribution {
  const clearest = Math.min(most, clearestDay(mean));
  const held = Math.min(mean, clearest);
  if (held - dullestClearness < leastSpread || clearest - held < leastSpread)
    return { dullest: held, clearest: held, gamma: 0 };
  const ends = { dullest: dullestClearness, clearest };
  let [low, high] = [-steepestGamma, steepestGamma];
  for (let i = 0; i < halvings; i += 1) {
    const gamma = i === 0 ? herzogGamma(held, dullestClearness, clearest) : (low + high) / 2;
    if (meanClearness({ ...ends, gamma }) < held) low = gamma;
    else high = gamma;
  }
  return { ...ends, gamma: (low + high) / 2 };
}
