import { describe, expect, it } from 'vitest';
import { drawSkies } from '../../src-main/model/sun/history/draw-skies.ts';
import { transitionLibrary } from '../../src-main/model/sun/history/transition-library.ts';
import { chainOf, type TransitionChain } from '../../src-main/model/sun/history/transition-sky.ts';
import { expectNear } from '../support/near.ts';
import { transitionRows } from './tables/daily-clearness.ts';
import { deviationOf, lagOneOfAll, meanOf } from './weather-statistics.ts';

/** Mean and deviation of a chain in the long run, days being uniform within each of the ten states. */
function longRun({ stationary, dullest, clearest }: TransitionChain): { mean: number; deviation: number } {
  const width = (clearest - dullest) / stationary.length;
  const moments = { first: 0, second: 0 };
  stationary.forEach((share, state) => {
    const middle = dullest + (state + 0.5) * width;
    moments.first += share * middle;
    moments.second += share * (middle ** 2 + width ** 2 / 12);
  });
  return { mean: moments.first, deviation: Math.sqrt(moments.second - moments.first ** 2) };
}

/** 100,000 days of one class at its own mean, so that nothing is bent; the starts of 100 histories count for nothing. */
function longHistories(mean: number) {
  const days = new Array<{ mean: number; most: number }>(1000).fill({ mean, most: 1 });
  return drawSkies(days, { method: 'transitions' }, 100, 1988);
}

describe('the transition library of Aguiar and others', () => {
  it('has ten classes of ten states each', () => {
    expect(transitionLibrary).toHaveLength(10);
    for (const { thousandths } of transitionLibrary)
      expect(thousandths.map((row) => row.length)).toEqual(new Array(10).fill(10));
  });
  it.each(transitionLibrary)('has rows that add up, class up to $upTo', ({ thousandths }) => {
    thousandths.forEach((row, state) => {
      const sum = row.reduce((all, each) => all + each, 0) / 1000;
      expectNear(sum, 1, 0.003 + 1e-12, `sum of the row of state ${state + 1}`);
    });
  });

  it.each(transitionRows)('has the printed range and mean, class $name', (row) => {
    const chain = chainOf(row.mean);
    expectNear(chain.dullest, row.dullest, 0, 'dullest day');
    expectNear(chain.clearest, row.clearest, 0, 'clearest day');
    // Printed to three decimals.
    expectNear(longRun(chain).mean, row.mean, 0.001, 'long-run mean of the chain');
    expectNear(longRun(chain).deviation, row.deviation, 0.001, 'long-run deviation of the chain');
  });

  // 100,000 days: tolerances of the published properties for a run of that length; lag-1 is printed to two decimals.
  it.each(transitionRows)('keeps mean, deviation and memory in class $name', (row) => {
    const skies = longHistories(longRun(chainOf(row.mean)).mean);
    expectNear(meanOf(skies.clearness), row.mean, 0.005, 'mean of the days');
    expectNear(deviationOf(skies.clearness), row.deviation, 0.005, 'deviation of the days');
    expectNear(lagOneOfAll(skies), row.lagOne, 0.015, 'lag-1 about the long-run mean');
  });
});
