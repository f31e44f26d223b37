import { describe, expect, it } from 'vitest';
import { limits, noLimits } from '../../shared-types/limits.ts';

const allowedOf = (change: Readonly<Record<string, unknown>>): readonly string[] =>
  limits.safeParse({ ...noLimits, ...change }).error?.issues.map(({ message }) => message) ?? [];

describe('limits', () => {
  it('are none as a rule', () => {
    expect(limits.parse(noLimits)).toEqual(noLimits);
    const { byAir, ...figures } = noLimits;
    expect([byAir, ...Object.values(figures)]).toEqual([false, null, null, null, null]);
  });

  it('refuse figures that no kit could keep to, and what is no number', () => {
    expect(allowedOf({ toBuy: -1 })).toEqual(['a number from 0 to 1,000,000']);
    expect(allowedOf({ grams: NaN })).toEqual(['a number from 0 to 1,000,000 g']);
    expect(allowedOf({ margin: -1.5 })).toEqual(['a number from \u22121 to 3']);
    expect(allowedOf({ byAir: null })).toEqual(['yes or no']);
  });

  it('take a margin below 0, and a price of nothing', () => {
    expect(allowedOf({ margin: -0.2, toBuy: 0 })).toEqual([]);
  });
});
