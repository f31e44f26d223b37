import { describe, it } from 'vitest';
import {
  clearestDay,
  distributionOf,
  dullestClearness,
  herzogGamma,
  meanClearness,
  type ClearnessDistribution,
} from '../../src-main/model/sun/history/clearness-distribution.ts';
import { expectNear } from '../support/near.ts';
import { shareBelow } from '../support/share-below.ts';
import { clearnessColumns, clearnessRows } from './tables/daily-clearness.ts';

/** Deviation by numeric integration: E[x] and E[x2] from the shares below of thin slices. */
function deviationOf(distribution: ClearnessDistribution): number {
  const slices = 10_000;
  const width = (distribution.clearest - distribution.dullest) / slices;
  const moments = { first: 0, second: 0 };
  for (let slice = 0; slice < slices; slice += 1) {
    const from = distribution.dullest + slice * width;
    const weight = shareBelow(distribution, from + width) - shareBelow(distribution, from);
    moments.first += weight * (from + width / 2);
    moments.second += weight * (from + width / 2) ** 2;
  }
  return Math.sqrt(moments.second - moments.first ** 2);
}

/** Tolerance of values printed to three decimals, as the formula's own evaluations differ. */
const printed = 2e-3;

describe('how days spread about a month’s mean clearness', () => {
  it.each(clearnessRows)('has the clearest day of Hollands & Huget at $mean', ({ mean, clearest }) =>
    expectNear(clearestDay(mean), clearest, 1e-4, 'clearest day'),
  );
  it.each(clearnessRows)('bends as Herzog’s approximation says at $mean', ({ mean, herzog }) =>
    expectNear(herzogGamma(mean, dullestClearness, clearestDay(mean)), herzog, printed, 'Herzog’s gamma'),
  );
  it.each(clearnessRows)('bends so that its mean is exactly $mean', ({ mean, gamma }) => {
    const distribution = distributionOf(mean, Infinity);
    expectNear(distribution.gamma, gamma, printed, 'gamma');
    expectNear(meanClearness(distribution), mean, 1e-9, 'mean of the distribution');
  });
  it.each(clearnessRows)('has the published deviation at a mean of $mean', ({ mean, deviation }) =>
    expectNear(deviationOf(distributionOf(mean, Infinity)), deviation, 1e-3, 'deviation of clearness'),
  );
  it.each(clearnessRows)('has the shares below of Bendt at $mean', ({ mean, sharesBelow }) => {
    const distribution = distributionOf(mean, Infinity);
    sharesBelow.forEach((expected, column) => {
      const clearness = clearnessColumns[column]!;
      expectNear(shareBelow(distribution, clearness), expected, printed, `share of days below ${clearness}`);
    });
  });
});
