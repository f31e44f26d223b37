import { describe, expect, it } from 'vitest';
import { likelihoodInterval } from '../../src-main/model/field-log/likelihood-interval.ts';
import { meanOfCells } from '../../src-main/model/field-log/mean-of-cells.ts';
import { studentPoint } from '../../src-main/model/field-log/student.ts';
import { expectNear } from '../support/near.ts';

/*
 * Meeker & Escobar 1998, Statistical Methods for Reliability Data, chapter 7: times between alpha particles of americium-241,
 * in units of 1/5000 s, counted in intervals (after Berkson 1966), and the mean of an exponential law with its 95 % likelihood
 * interval as table 7.3 prints them (from memory; the counts add up to the numbers of times given, and the means come out).
 */
const bounds = [0, 100, 300, 500, 700, 1000, 2000, 4000, Infinity] as const;
const samples = [
  { times: 200, counts: [41, 44, 24, 32, 29, 21, 9, 0], mean: 572.3, low: 498, high: 662 },
  { times: 20, counts: [3, 7, 4, 1, 3, 2, 0, 0], mean: 440.2, low: 289, high: 713 },
] as const;
/** Half the 95 % point of chi-squared with one degree of freedom, 3.8415. */
const chiSquaredDrop = 1.92073;

describe('the likelihood interval of counts in intervals', () => {
  it.each(samples)('is that of Meeker & Escobar for $times times', ({ times, counts, mean, low, high }) => {
    expect(counts.reduce<number>((sum, count) => sum + count, 0)).toBe(times);
    const logLikelihood = (theta: number): number =>
      theta <= 0
        ? -Infinity
        : counts.reduce<number>((sum, count, at) => {
            const share = Math.exp(-bounds[at]! / theta) - Math.exp(-bounds[at + 1]! / theta);
            return count === 0 ? sum : sum + count * Math.log(share);
          }, 0);
    const found = likelihoodInterval(logLikelihood, { low: 50, high: 4000 }, chiSquaredDrop);
    // Printed to a tenth, and the bounds to the unit.
    expectNear(found.value, mean, 0.06, `mean of ${times}`);
    expectNear(found.low, low, 0.6, `low end of ${times}`);
    expectNear(found.high, high, 0.6, `high end of ${times}`);
  });
});

/*
 * JCGM 100:2008 (GUM), table G.2: points of Student's law at 95 %, by degrees of freedom (from memory; any table of the law has
 * them).
 */
const tableG2 = [
  [1, 12.71],
  [2, 4.3],
  [3, 3.18],
  [4, 2.78],
  [5, 2.57],
  [9, 2.26],
  [10, 2.23],
  [19, 2.09],
  [50, 2.01],
] as const;

describe("Student's point", () => {
  it.each(tableG2)('with %i degrees of freedom is that of GUM, table G.2', (degrees, point) => {
    // Printed to a hundredth.
    expectNear(studentPoint(0.95, degrees), point, 0.0051, `t of ${degrees}`);
  });
});

/* GUM, 4.4.3 and table 1: twenty readings of a temperature, °C; printed mean 100.14, standard uncertainty of the mean 0.33
 * (from memory; that mean and that uncertainty come out of the readings as typed, so that a slip would show). */
const temperaturesDegC = [
  96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95,
  101.11, 101.2, 101.57, 101.84, 102.36, 102.72,
] as const;
const gumMeanDegC = 100.14;
const gumUncertaintyDegC = 0.33;
/** Table G.2, 19 degrees of freedom. */
const gumPoint = 2.09;

describe('the mean of readings in cells', () => {
  it('is mean and interval of GUM 4.4.3 for cells as narrow as the digits printed', () => {
    const cells = temperaturesDegC.map((degC) => ({ low: degC - 0.005, high: degC + 0.005 }));
    const found = meanOfCells(cells, 0.95)!;
    expectNear(found.value, gumMeanDegC, 0.006, 'mean');
    // Two printed figures of two digits multiplied: 2.09 x 0.33 to about 0.012.
    expectNear(found.high - found.value, gumPoint * gumUncertaintyDegC, 0.012, 'half interval up');
    expectNear(found.value - found.low, gumPoint * gumUncertaintyDegC, 0.012, 'half interval down');
  });

  it('keeps both when the readings are only known to fall in the intervals of 1 °C of table 1', () => {
    const cells = temperaturesDegC.map((degC) => {
      const low = Math.floor(degC - 0.5) + 0.5;
      return { low, high: low + 1 };
    });
    const found = meanOfCells(cells, 0.95)!;
    // Cells of 1 °C hide up to a twelfth of their square in the variance of 2.2, and shift a mean of twenty by some hundredths.
    expectNear(found.value, gumMeanDegC, 0.06, 'mean');
    expectNear((found.high - found.low) / 2, gumPoint * gumUncertaintyDegC, 0.05, 'half interval');
  });
});
