import { describe, expect, it } from 'vitest';
import {
  countedWh,
  fallBetween,
  fullnessOfShare,
  quotient,
} from '../../../../src-main/model/field-log/cells.ts';
import { estimateOf, tellingReadings } from '../../../../src-main/model/field-log/estimate.ts';
import type { Estimate } from '../../../../src-main/model/field-log/likelihood-interval.ts';
import type { Cell } from '../../../../src-main/model/field-log/mean-of-cells.ts';
import { ratioOf } from '../../../../src-main/model/field-log/ratio.ts';
import {
  randomStreams,
  standardNormal,
  uniform,
  type RandomStream,
} from '../../../../src-main/model/random.ts';
import { shareOfLights } from '../../../../shared-types/stop-plan.ts';

const level = 0.95;
const trueWh = 60;
/** Scatter of a bank's delivery from time to time, as a share: load and cold. */
const scatter = 0.05;
const lights = 4;
/** Of 200 intervals at 95 % fewer than 179 hold the truth, or more than 198, in one case of a thousand each (binomial). */
const [runs, fewestHeld, mostHeld] = [200, 179, 198];
/** Of 100, fewer than 87. */
const [lightRuns, fewestByLights] = [100, 87];

const full: Cell = { low: 1, high: 1 };

function delivered(stream: RandomStream, drop: number): Cell {
  return countedWh(trueWh * drop * Math.exp(scatter * standardNormal(stream)));
}

/** Full to empty through the meter. */
const wholeDrain = (stream: RandomStream): Cell => delivered(stream, 1);

/** From full down to wherever it happens to be, told by the lights. */
function byLights(stream: RandomStream): Cell {
  const left = uniform(stream) * 0.7;
  const drop = fallBetween(full, shareOfLights(Math.ceil(left * lights), lights));
  return quotient(delivered(stream, 1 - left), drop);
}

/** By a gauge in whole per cent, over any part. */
function byGauge(stream: RandomStream): Cell {
  const [before, after] = [0.7 + 0.25 * uniform(stream), 0.1 + 0.3 * uniform(stream)];
  const shown = (share: number): Cell => fullnessOfShare(Math.round(share * 100) / 100);
  return quotient(delivered(stream, before - after), fallBetween(shown(before), shown(after)));
}

function held(read: (stream: RandomStream) => Cell, readings: number, trials: number): number {
  const streams = randomStreams(20);
  let count = 0;
  for (let run = 0; run < trials; run += 1) {
    const stream = streams.next().value;
    const found = estimateOf(
      Array.from({ length: readings }, () => read(stream)),
      level,
    )!;
    if (found.low <= trueWh && trueWh <= found.high) count += 1;
  }
  return count;
}

describe('the interval of simulated readings', () => {
  it.each([
    ['three drains from full to empty', wholeDrain, 3],
    ['five readings of a gauge in per cent', byGauge, 5],
  ])('holds the truth as often as it claims, for %s', (_, read, readings) => {
    const count = held(read, readings, runs);
    expect(count).toBeGreaterThanOrEqual(fewestHeld);
    expect(count).toBeLessThanOrEqual(mostHeld);
  });

  it.each([4, 6])('holds it at least as often for %i readings of four lights', (readings) => {
    expect(held(byLights, readings, lightRuns)).toBeGreaterThanOrEqual(fewestByLights);
  });

  it('narrows with more readings of the lights', () => {
    const width = (readings: number): number => {
      const stream = randomStreams(3).next().value;
      const { low, high } = estimateOf(
        Array.from({ length: readings }, () => byLights(stream)),
        level,
      )!;
      return high / low;
    };
    expect(width(30)).toBeLessThan(width(5));
  });
});

describe('an estimate', () => {
  const cell = (wh: number): Cell => countedWh(wh);

  it('waits for a third reading', () => {
    expect(estimateOf([cell(58), cell(60)], level)).toBeNull();
    expect(estimateOf([cell(58), cell(60), cell(61)], level)).not.toBeNull();
  });

  it('does not count a reading that sets no upper bound, yet learns from it', () => {
    const atLeast: Cell = { low: 62, high: Infinity };
    expect(tellingReadings([cell(58), cell(60), atLeast])).toBe(2);
    expect(estimateOf([cell(58), cell(60), atLeast], level)).toBeNull();
    const closed = [cell(58), cell(60), cell(61)];
    expect(estimateOf([...closed, atLeast], level)!.value).toBeGreaterThan(estimateOf(closed, level)!.value);
  });

  it('gives all that fits when lights agree, and the middle of it', () => {
    const wide: Cell = { low: 40, high: 80 };
    const found = estimateOf([wide, wide, wide, wide], level)!;
    expect(found.low).toBeLessThanOrEqual(40);
    expect(found.high).toBeGreaterThanOrEqual(80);
    expect(found.value).toBeCloseTo(Math.sqrt(40 * 80), 1);
  });

  it('does not hang on the order of the readings', () => {
    const cells = [cell(52), { low: 50, high: 75 }, cell(61), cell(58)];
    const [one, other] = [estimateOf(cells, level)!, estimateOf(cells.toReversed(), level)!];
    expect(one.value).toBeCloseTo(other.value, 6);
    expect(one.low).toBeCloseTo(other.low, 6);
  });

  it('scales with its unit', () => {
    const cells = [cell(5.2), cell(5.9), cell(6.4)];
    const inTenths = cells.map(({ low, high }) => ({ low: low * 10, high: high * 10 }));
    expect(estimateOf(inTenths, level)!.high).toBeCloseTo(estimateOf(cells, level)!.high * 10, 4);
  });

  it('stays finite for readings far apart', () => {
    const found = estimateOf([cell(0.02), cell(55), cell(1900)], level)!;
    expect(Object.values(found).every(Number.isFinite)).toBe(true);
  });
});

describe('a ratio of two estimates', () => {
  const around = (value: number, share: number): Estimate => ({
    value,
    low: value * (1 - share),
    high: value * (1 + share),
  });

  it('is as uncertain as both together', () => {
    const alone = ratioOf(around(55, 0.04), around(70, 1e-9));
    const both = ratioOf(around(55, 0.04), around(70, 0.04));
    expect(alone.value).toBeCloseTo(55 / 70, 12);
    expect(alone.low).toBeCloseTo((55 * 0.96) / 70, 6);
    expect(both.high / both.low).toBeGreaterThan(alone.high / alone.low);
  });
});
