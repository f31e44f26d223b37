import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pairedMargin } from '../../../../src-main/model/judge/paired-margin.ts';
import { randomStreams, standardNormal, type RandomStream } from '../../../../src-main/model/random.ts';

const confidence = 0.9;
const anyFactors = fc
  .array(fc.tuple(fc.double({ min: 0, max: 4, noNaN: true }), fc.double({ min: 0, max: 4, noNaN: true })), {
    minLength: 1,
    maxLength: 60,
  })
  .map((pairs) => ({
    before: Float64Array.from(pairs, ([before]) => before),
    after: Float64Array.from(pairs, ([, after]) => after),
  }));
const runs = { seed: 7, numRuns: 60, endOnFailure: true };

describe('the paired difference of two margins', () => {
  it('refuses histories that are no pairs, and none at all', () => {
    expect(() => pairedMargin(Float64Array.of(1), Float64Array.of(1, 2), confidence)).toThrow(
      /1 before, 2 after/,
    );
    expect(() => pairedMargin(new Float64Array(), new Float64Array(), confidence)).toThrow(/0 before/);
  });

  it('does not know a margin of which a history is not known', () => {
    const { before, after, difference } = pairedMargin(
      Float64Array.of(1, 1.1, 1.2),
      Float64Array.of(1, Number.NaN, 1.2),
      confidence,
    );
    expect(before).toBeCloseTo(0, 9);
    expect(after).toBeNaN();
    expect(difference).toBeNaN();
  });

  it('takes the order statistic that leaves as many histories behind as may fail', () => {
    const before = Float64Array.from({ length: 20 }, (_, history) => 2 - history / 20);
    const result = pairedMargin(
      before,
      before.map((factor) => factor + 0.5),
      confidence,
    );
    // 20 histories ascending from 1.05 by 0.05; two may fail, so the third, 1.15, is the margin's.
    expect(result.before).toBeCloseTo(0.15, 9);
    expect(result.after).toBeCloseTo(0.65, 9);
  });

  it('is sure of a change that is the same in every history, whatever their luck', () => {
    const before = Float64Array.from({ length: 50 }, (_, history) => 0.5 + ((history * 37) % 50) / 40);
    const { difference, low, high } = pairedMargin(
      before,
      before.map((factor) => factor + 0.2),
      confidence,
    );
    for (const figure of [difference, low, high]) expect(figure).toBeCloseTo(0.2, 9);
  });

  it('says where the largest factor tried was reached', () => {
    const { cappedBefore, cappedAfter } = pairedMargin(
      Float64Array.of(1, 2),
      Float64Array.of(4, 4),
      confidence,
    );
    expect([cappedBefore, cappedAfter]).toEqual([false, true]);
  });

  it('holds its own point, and turns its sign with the order of the two', () => {
    fc.assert(
      fc.property(anyFactors, ({ before, after }) => {
        const there = pairedMargin(before, after, confidence);
        const back = pairedMargin(after, before, confidence);
        expect(there.low).toBeLessThanOrEqual(there.difference);
        expect(there.high).toBeGreaterThanOrEqual(there.difference);
        expect(back.difference).toBeCloseTo(-there.difference, 9);
        expect(back.low).toBeCloseTo(-there.high, 9);
        expect(back.high).toBeCloseTo(-there.low, 9);
      }),
      runs,
    );
  });

  it('finds no difference of a kit from itself', () => {
    fc.assert(
      fc.property(anyFactors, ({ before }) => {
        const { difference, low, high } = pairedMargin(before, before, confidence);
        expect([difference, low, high]).toEqual([0, 0, 0]);
      }),
      runs,
    );
  });
});

/** The 0.90 point of the standard normal distribution, NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1 (1.282). */
const z90 = 1.282;
const [mean, spread, gain, gainSpread] = [1.4, 0.2, 0.3, 0.1];
/** The tenth percentile of a normal variable lies z90 spreads below its mean; independent variances add up. */
const truth = gain - z90 * (Math.hypot(spread, gainSpread) - spread);

function covers(stream: RandomStream, histories: number): boolean {
  const before = Float64Array.from({ length: histories }, () => mean + spread * standardNormal(stream));
  const after = before.map((factor) => factor + gain + gainSpread * standardNormal(stream));
  const { low, high } = pairedMargin(before, after, confidence);
  return low <= truth && truth <= high;
}

describe('the interval of the difference, on data whose truth is known', () => {
  it('holds the truth about as often as it says, and misses it now and then', () => {
    const trials = 150;
    const stream = randomStreams(11).next().value;
    const held = Array.from({ length: trials }, () => covers(stream, 100)).filter(Boolean).length;
    // 95 % by its claim; three standard errors of 150 trials are 5 points.
    expect(held / trials).toBeGreaterThan(0.9);
    expect(held).toBeLessThan(trials);
  });
});
