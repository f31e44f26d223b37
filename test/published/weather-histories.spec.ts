import { describe, expect, it } from 'vitest';
import { distributionOf } from '../../src-main/model/sun/history/clearness-distribution.ts';
import { drawSkies, type Skies } from '../../src-main/model/sun/history/draw-skies.ts';
import type { SkyLaw } from '../../src-main/model/sun/history/sky-law.ts';
import { expectNear } from '../support/near.ts';
import { shareBelow } from '../support/share-below.ts';
import { clearnessRows, transitionRows } from './tables/daily-clearness.ts';
import {
  deviationOf,
  kolmogorovDistance,
  lagOneOfAll,
  lagOneWithinHistories,
  meanLongestRun,
  meanOf,
  unlinked,
} from './weather-statistics.ts';

/** With the persistence that a rider starts with. */
const persistent: SkyLaw = { method: 'distribution', persistence: 0.29 };
const independent: SkyLaw = { method: 'distribution', persistence: 0 };
const transitions: SkyLaw = { method: 'transitions' };
const means = [0.3, 0.5, 0.7] as const;

/** 2,000 months of 30 days, 60,000 days in all; no cloudless sky holds them down. */
function months(mean: number, law: SkyLaw): Skies {
  return drawSkies(new Array<{ mean: number; most: number }>(30).fill({ mean, most: 1 }), law, 2000, 1981);
}

const methods = [
  { name: 'distribution', law: persistent },
  { name: 'transitions', law: transitions },
].flatMap((method) => means.map((mean) => ({ ...method, mean })));

describe('2,000 months of drawn weather', () => {
  it.each(methods)('keep the mean of $mean within 1 %: $name', ({ mean, law }) =>
    expectNear(meanOf(months(mean, law).clearness), mean, 0.01 * mean, 'mean clearness'),
  );

  // Gordon & Reddy 1988 (Solar Energy 41:215) find no universal strength; the bands hold what the published libraries imply for
  // each estimator, independent days and anything above 0.6 fail. The standard error of 60,000 days is 0.004.
  it.each(methods)('follow on from day to day at $mean: $name', ({ mean, law }) => {
    const skies = months(mean, law);
    expectNear(lagOneOfAll(skies), 0.3, 0.15, 'lag-1 about the long-run mean');
    expectNear(lagOneWithinHistories(skies), 0.25, 0.15, 'lag-1 about each month’s own mean');
  });
  it.each(means)('show no memory in independent days at %d', (mean) => {
    const skies = months(mean, independent);
    // Four standard errors; a month's own mean takes out one thirtieth, 0.03.
    expectNear(lagOneOfAll(skies), 0, 0.016, 'lag-1 about the long-run mean');
    expectNear(lagOneWithinHistories(skies), -0.03, 0.016, 'lag-1 about each month’s own mean');
  });
});

describe('the spread of drawn days', () => {
  it.each(means)('is that of Bendt’s distribution at a mean of %d', (mean) => {
    // Printed to three decimals; 60,000 days that follow on count for 33,000, which is 0.4 % of a deviation: together 0.003.
    const row = clearnessRows.find((each) => each.mean === mean)!;
    expectNear(
      deviationOf(months(mean, persistent).clearness),
      row.deviation,
      0.003,
      'deviation of clearness',
    );
  });

  it.each(means)('follows Bendt’s curve closely at a mean of %d', (mean) => {
    /*
     * 60,000 independent days stay within 1.95/sqrt(60000) = 0.008 of their distribution 999 times in 1000. Days with a lag-1 of 0.29
     * count for fewer: the error grows by sqrt((1 + r)/(1 - r)) = 1.35, to 0.011. 0.02 leaves the published approximations alone.
     */
    const distribution = distributionOf(mean, Infinity);
    const distance = kolmogorovDistance(months(mean, persistent).clearness, (k) =>
      shareBelow(distribution, k),
    );
    expectNear(distance, 0, 0.02, 'Kolmogorov distance');
  });

  it.each([
    { mean: 0.3, className: 'up to 0.30' },
    { mean: 0.5, className: '0.45 to 0.50' },
    { mean: 0.7, className: '0.65 to 0.70' },
  ])('is near the library class $className at $mean', ({ mean, className }) => {
    // Each class has its own mean, here 0.024 to 0.06 from the one asked for. Bending it there changes the deviation as much as from
    // one class to the next, which is at most 0.02 among those below 0.70.
    const row = transitionRows.find(({ name }) => name === className)!;
    expectNear(
      deviationOf(months(mean, transitions).clearness),
      row.deviation,
      0.02,
      'deviation of clearness',
    );
  });
});

describe('runs of days under half the mean', () => {
  // Months of 0.7 have such a day in every other month: too few to run. Elsewhere by at least a twentieth, which is three
  // standard errors, so that no chance decides.
  it.each([0.3, 0.5])('are longer than in independent days at %d', (mean) => {
    const linked = meanLongestRun(months(mean, persistent), mean / 2);
    expect(linked).toBeGreaterThan(1.05 * meanLongestRun(months(mean, independent), mean / 2));
  });
  it.each(methods.filter(({ mean }) => mean < 0.7))(
    'are longer than with days unlinked at $mean: $name',
    ({ mean, law }) => {
      const skies = months(mean, law);
      expect(meanLongestRun(skies, mean / 2)).toBeGreaterThan(
        1.05 * meanLongestRun(unlinked(skies), mean / 2),
      );
    },
  );
});
