import { describe, expect, it } from 'vitest';
import { likelihoodInterval } from '../../src-main/model/field-log/likelihood-interval.ts';
import { estimateOf } from '../../src-main/model/field-log/estimate.ts';
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

/*
 * What follows needs no table: each value has a closed form that a reader can derive with pen and paper, by another way than the
 * model takes. The chances below are all 95 %.
 */
const level = 0.95;

/*
 * With one degree of freedom Student's law is Cauchy's, whose share within t is (2 / pi) atan t; with two the share is
 * t / sqrt(2 + t^2); with four it is s (3 - s^2) / 2 with s = t / sqrt(4 + t^2). Turned round for the first two.
 */
describe("Student's point by its closed forms", () => {
  it.each([0.5, 0.8, 0.95, 0.99])(
    'is tan(pi / 2 x level) with one degree of freedom, at a level of %d',
    (at) => {
      const point = Math.tan((Math.PI / 2) * at);
      expectNear(studentPoint(at, 1), point, 1e-9 * point, 't of 1');
    },
  );

  it.each([0.5, 0.8, 0.95, 0.99])('is level x sqrt(2 / (1 - level^2)) with two, at a level of %d', (at) => {
    const point = at * Math.sqrt(2 / (1 - at ** 2));
    expectNear(studentPoint(at, 2), point, 1e-9 * point, 't of 2');
  });

  it.each([0.5, 0.8, 0.95, 0.99])('holds its level by the polynomial for four, at a level of %d', (at) => {
    const t = studentPoint(at, 4);
    const s = t / Math.sqrt(4 + t ** 2);
    expectNear((s * (3 - s ** 2)) / 2, at, 1e-12, 'share within t of 4');
  });
});

/*
 * Likelihoods whose interval has a closed form. Normal observations of known spread: the log-likelihood is a parabola, so the
 * interval is mean -+ spread sqrt(2 drop / n). Equal chances from 0 to an unknown top: -n ln top from the highest observation on,
 * so it ends at highest x exp(drop / n). None of n in a class: n ln(1 - p), so p is at most 1 - exp(-drop / n).
 */
describe('the likelihood interval by closed forms', () => {
  it('is that of a mean of known spread', () => {
    const [mean, spread, n] = [57, 4, 6];
    const parabola = (value: number): number => (-n * (value - mean) ** 2) / (2 * spread ** 2);
    const found = likelihoodInterval(parabola, { low: 50, high: 70 }, chiSquaredDrop);
    const half = spread * Math.sqrt((2 * chiSquaredDrop) / n);
    // The edges are halved 24 times over the range that is searched.
    expectNear(found.value, mean, 1e-4, 'mean');
    expectNear(found.low, mean - half, 1e-4, 'low end');
    expectNear(found.high, mean + half, 1e-4, 'high end');
  });

  it('is that of the top of equal chances', () => {
    const [highest, n] = [40, 8];
    const top = (value: number): number => (value < highest ? -Infinity : -n * Math.log(value / highest));
    const found = likelihoodInterval(top, { low: 30, high: 90 }, chiSquaredDrop);
    expectNear(found.low, highest, 1e-3, 'low end');
    expectNear(found.high, highest * Math.exp(chiSquaredDrop / n), 1e-3, 'high end');
  });

  it('is that of a share of which none was seen', () => {
    const n = 20;
    const none = (p: number): number => (p < 0 || p >= 1 ? -Infinity : n * Math.log1p(-p));
    const found = likelihoodInterval(none, { low: 0, high: 1 }, chiSquaredDrop);
    expectNear(found.high, 1 - Math.exp(-chiSquaredDrop / n), 1e-5, 'high end');
  });
});

/*
 * Three readings a - d, a, a + d have the mean a and the standard deviation d, so Student's half interval is t d / sqrt 3 with
 * t = 0.95 sqrt(2 / (1 - 0.95^2)) from above. Of a quantity that scatters by shares the same holds for a / r, a, a r.
 */
describe('the mean of three readings by hand', () => {
  const t = level * Math.sqrt(2 / (1 - level ** 2));
  const point = (value: number) => ({ low: value - 1e-4, high: value + 1e-4 });

  it('has the half interval t d / sqrt 3', () => {
    const [a, d] = [60, 2];
    const found = meanOfCells([a - d, a, a + d].map(point), level)!;
    // Cells of 2e-4 about each point.
    expectNear(found.value, a, 1e-3, 'mean');
    expectNear(found.high - a, (t * d) / Math.sqrt(3), 2e-3, 'half interval up');
    expectNear(a - found.low, (t * d) / Math.sqrt(3), 2e-3, 'half interval down');
  });

  it('has the factor r^(t / sqrt 3) where it scatters by shares', () => {
    const [a, r] = [60, 1.05];
    const found = estimateOf([a / r, a, a * r].map(point), level)!;
    const factor = r ** (t / Math.sqrt(3));
    expectNear(found.value, a, 1e-3, 'value');
    expectNear(found.high, a * factor, 5e-3, 'high end');
    expectNear(found.low, a / factor, 5e-3, 'low end');
  });
});

/*
 * All readings in one cell from 0 to w: a mean inside it fits them with certainty, and one at x beyond its edge best with the
 * spread that makes the chance between x and x + w largest, where both densities times their distance are alike:
 * spread^2 = ((x + w)^2 - x^2) / (2 ln((x + w) / x)). The chance itself is summed here by Simpson's rule. So the interval must end
 * where n times its logarithm has fallen by n / 2 ln(1 + t^2 / (n - 1)).
 */
describe('the interval of lights that all agree', () => {
  const density = (z: number): number => Math.exp(-(z ** 2) / 2) / Math.sqrt(2 * Math.PI);

  function chanceBetween(from: number, to: number): number {
    const panels = 2000;
    const step = (to - from) / panels;
    let sum = density(from) + density(to);
    for (let at = 1; at < panels; at += 1) sum += (at % 2 === 1 ? 4 : 2) * density(from + at * step);
    return (sum * step) / 3;
  }

  it('ends where the likelihood has fallen as far as Student lets it', () => {
    const [w, n] = [10, 3];
    const found = meanOfCells(
      Array.from({ length: n }, () => ({ low: 0, high: w })),
      level,
    )!;
    const t = level * Math.sqrt(2 / (1 - level ** 2));
    const allowed = (n / 2) * Math.log(1 + t ** 2 / (n - 1));
    const x = found.high - w;
    const spread = Math.sqrt(((x + w) ** 2 - x ** 2) / (2 * Math.log((x + w) / x)));
    expectNear(found.value, w / 2, 1e-2, 'middle of the cell');
    expectNear(-n * Math.log(chanceBetween(x / spread, (x + w) / spread)), allowed, 1e-3, 'fall at the end');
    expectNear(found.low, -x, 1e-2, 'low end, as far out');
  });
});
