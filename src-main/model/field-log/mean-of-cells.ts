import { highestBetween, likelihoodInterval, type Estimate } from './likelihood-interval.ts';
import { logShareBetween } from './normal.ts';
import { studentPoint } from './student.ts';

/** What one reading tells of a value: that it lies between two bounds, of which one may be infinite. */
export interface Cell {
  readonly low: number;
  readonly high: number;
}

/**
 * With two readings Student's point is 12.7, and the interval says nothing a rider can use; with three it is 4.3 (our choice).
 */
export const fewestReadings = 3;

/** A cell that bounds the value on both sides; one that does not can't make an interval on its own. */
export function isClosed({ low, high }: Cell): boolean {
  return Number.isFinite(low) && Number.isFinite(high);
}

/**
 * Mean of a value that scatters normally from reading to reading, from readings that only say between which bounds it lay.
 *
 * Maximum likelihood for interval-censored observations (Turnbull 1976, Journal of the Royal Statistical Society B
 * 38:290-295, has the likelihood; Meeker & Escobar 1998, chapter 8, the profile likelihood of one parameter). Lights are such
 * readings: three of four lit is no 62.5 %, but anything from half to three quarters.
 *
 * The log-likelihood may fall by n/2 ln(1 + t^2/(n - 1)), t being Student's point with n - 1 degrees of freedom. For cells so
 * narrow that they are points this is exactly Student's interval of a mean (JCGM 100:2008, GUM, 4.2 and G.3), because the
 * likelihood ratio is that function of t; with many readings it comes to the point of chi-squared. The usual chi-squared
 * alone would hold a mean of three readings 85 times in 100 instead of 95.
 *
 * @param cells with low below high
 * @param level share of such intervals that hold the mean
 * @returns null with fewer than `fewestReadings` closed cells
 */
export function meanOfCells(cells: readonly Cell[], level: number): Estimate | null {
  const closed = cells.filter(isClosed);
  if (closed.length < fewestReadings) return null;
  const hull = {
    low: Math.min(...closed.map(({ low }) => low)),
    high: Math.max(...closed.map(({ high }) => high)),
  };
  const spreads = spreadRange(closed, hull);
  const profile = (mean: number): number => {
    const at = (logSpread: number): number => logLikelihood(cells, mean, Math.exp(logSpread));
    return at(highestBetween(at, Math.log(spreads.low), Math.log(spreads.high)));
  };
  return likelihoodInterval(profile, hull, allowedDrop(closed.length, level));
}

function allowedDrop(readings: number, level: number): number {
  const t = studentPoint(level, readings - 1);
  return (readings / 2) * Math.log1p((t * t) / (readings - 1));
}

/** A spread far below the width of a cell fits as well as none at all; one far beyond all cells fits none. */
const finestSpread = 1e-2;
const widestSpread = 30;

function spreadRange(closed: readonly Cell[], hull: Cell): Cell {
  const narrowest = Math.min(...closed.map(({ low, high }) => high - low));
  return { low: narrowest * finestSpread, high: (hull.high - hull.low) * widestSpread };
}

function logLikelihood(cells: readonly Cell[], mean: number, spread: number): number {
  let sum = 0;
  for (const { low, high } of cells) sum += logShareBetween((low - mean) / spread, (high - mean) / spread);
  return sum;
}
