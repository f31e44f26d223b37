import { describe, expect, it } from 'vitest';
import { randomStreams, standardNormal, uniform, type RandomStream } from '../../../src-main/model/random.ts';
import { expectNear } from '../../support/near.ts';

const first = (seed: number): RandomStream => randomStreams(seed).next().value;
const drawn = (stream: RandomStream, draw: (stream: RandomStream) => number, count = 20_000): number[] =>
  Array.from({ length: count }, () => draw(stream));
const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

describe('randomStreams()', () => {
  it('gives the same numbers for the same seed', () => {
    expect(drawn(first(7), uniform, 5)).toEqual(drawn(first(7), uniform, 5));
    expect(drawn(first(7), uniform, 5)).not.toEqual(drawn(first(8), uniform, 5));
  });

  it('gives streams of one seed that have nothing in common', () => {
    const streams = randomStreams(1);
    const [one, other] = [streams.next().value, streams.next().value].map((stream) => drawn(stream, uniform));
    const products = one!.map((value, at) => (value - 0.5) * (other![at]! - 0.5) * 12);
    // The standard error of a correlation of independent values is 1/sqrt(20,000) = 0.007.
    expectNear(mean(products), 0, 0.03, 'correlation');
  });

  it('takes zero and the largest seed', () => {
    for (const seed of [0, 2_147_483_647]) expect(new Set(drawn(first(seed), uniform, 100)).size).toBe(100);
  });
});

describe('the draws', () => {
  it('are uniform from 0 to below 1', () => {
    const values = drawn(first(3), uniform);
    expect(Math.min(...values)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...values)).toBeLessThan(1);
    expectNear(mean(values), 0.5, 0.01, 'mean');
  });

  it('are standard normal, finite, with both tails', () => {
    const values = drawn(first(4), standardNormal);
    expect(values.every(Number.isFinite)).toBe(true);
    expectNear(mean(values), 0, 0.03, 'mean');
    expectNear(mean(values.map((value) => value * value)), 1, 0.05, 'variance');
    // 2.28 % lie above two: Abramowitz & Stegun, table 26.1.
    expectNear(values.filter((value) => value > 2).length / values.length, 0.0228, 0.005, 'share above 2');
  });
});
