import { describe, expect, it } from 'vitest';
import {
  barFor,
  beats,
  unbeaten,
  type Point,
} from '../../../../../src-main/model/judge/kit-search/frontier.ts';

const point = (toBuyMinor: number, grams: number, marginRung: number, frontWheelGrams = 0): Point => ({
  ...{ toBuyMinor, grams, frontWheelGrams, marginRung },
});

/*
 * Worked by hand: mass and cost to be small, days to be many. B beats C and nothing else beats anything; E equals A and both
 * stay.
 */
const [a, b, c, d, e] = [
  point(60, 300, 20),
  point(150, 500, 60),
  point(160, 520, 55),
  point(400, 900, 300),
  point(60, 300, 20),
] as const;

describe('beats()', () => {
  it('is at least as good in all and better in one', () => {
    const points = [a, b, c, d, e];
    const pairs = points.flatMap((one, i) =>
      points.flatMap((other, j) => (beats(one, other) ? [`${i} ${j}`] : [])),
    );
    expect(pairs).toEqual(['1 2']);
  });

  it('tells front-wheel grams apart', () => {
    expect(beats(point(60, 300, 20, 0), point(60, 300, 20, 10))).toBe(true);
    expect(beats(point(60, 300, 20, 10), point(60, 300, 20, 0))).toBe(false);
  });
});

describe('unbeaten()', () => {
  it('keeps equals and drops what is beaten', () => {
    expect(unbeaten([a, b, c, d, e])).toEqual([a, b, d, e]);
    expect(unbeaten([])).toEqual([]);
  });
});

describe('barFor()', () => {
  it('is the best margin of what costs and weighs no more, and less in something', () => {
    expect(barFor([a, b, d], c)).toBe(60);
    expect(barFor([a, b, d], b)).toBe(20);
    expect(barFor([a, d], point(60, 299, 0))).toBe(-Infinity);
  });

  it('is not set by an equal: both may stay', () => {
    expect(barFor([a], e)).toBe(-Infinity);
  });
});
