import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  allowedFailures,
  energyMargin,
  largestUseFactor,
  type Carries,
} from '../../../../src-main/model/flow/margin.ts';

/** Histories that each carry up to a factor of their own, and a count of the walks asked for. */
function histories(ownFactors: readonly number[]) {
  const asked = { walks: 0 };
  const carries: Carries = (history, factor) => {
    asked.walks += 1;
    return factor <= ownFactors[history]!;
  };
  return { carries, all: Array.from(ownFactors.keys()), asked };
}

/** The factor of the history that is the weakest of those that must be carried. */
function byDefinition(ownFactors: readonly number[], confidence: number): number {
  const sorted = [...ownFactors].sort((a, b) => a - b);
  return Math.min(largestUseFactor, sorted[allowedFailures(sorted.length, confidence)]!);
}

const tolerance = 0.0025;
const anyFactors = fc.array(fc.double({ min: 0, max: 6, noNaN: true }), { minLength: 1, maxLength: 120 });
const anyConfidence = fc.constantFrom(0.5, 0.8, 0.9, 0.95, 0.99, 1);

describe('allowedFailures()', () => {
  it.each([
    [200, 0.9, 20],
    [10, 0.9, 1],
    [9, 0.9, 0],
    [200, 1, 0],
    [1, 0.5, 0],
  ])('lets of %i histories at a confidence of %d fail %i', (count, confidence, allowed) => {
    expect(allowedFailures(count, confidence)).toBe(allowed);
  });
});

describe('energyMargin()', () => {
  it('is the largest factor that enough histories carry, less 1', () => {
    // Ten histories, one may fail: the second weakest decides.
    const { carries, all } = histories([1.8, 1.2, 2.4, 0.9, 3, 2, 2.2, 1.7, 1.9, 2.6]);
    const { value, refused, capped } = energyMargin(carries, all, 0.9);
    expect(value).toBeGreaterThan(0.2 - tolerance);
    expect(value).toBeLessThanOrEqual(0.2);
    expect(refused).toBeGreaterThan(1.2);
    expect(capped).toBe(false);
  });

  it('is what the definition says, whatever the histories carry', () => {
    fc.assert(
      fc.property(anyFactors, anyConfidence, (own, confidence) => {
        const { carries, all } = histories(own);
        const { value, capped } = energyMargin(carries, all, confidence);
        const factor = byDefinition(own, confidence);
        expect(capped).toBe(factor === largestUseFactor);
        expect(value + 1).toBeLessThanOrEqual(factor);
        expect(value + 1).toBeGreaterThan(factor - tolerance - 1e-12);
      }),
    );
  });

  it('does not depend on the order of the histories', () => {
    fc.assert(
      fc.property(anyFactors, anyConfidence, (own, confidence) => {
        const one = histories(own);
        const other = histories([...own].reverse());
        const difference =
          energyMargin(one.carries, one.all, confidence).value -
          energyMargin(other.carries, other.all, confidence).value;
        expect(Math.abs(difference)).toBeLessThanOrEqual(tolerance);
      }),
    );
  });

  it('is capped where even the largest factor is carried, and -100 % where none is', () => {
    const lasting = histories([9, 9, 9]);
    expect(energyMargin(lasting.carries, lasting.all, 1)).toEqual({
      value: largestUseFactor - 1,
      capped: true,
      refused: Infinity,
    });
    const dead = histories([0, 0, 0]);
    expect(energyMargin(dead.carries, dead.all, 0.9)).toMatchObject({ value: -1, capped: false });
  });

  it('never falls when less is asked to be sure', () => {
    fc.assert(
      fc.property(anyFactors, (own) => {
        const { carries, all } = histories(own);
        const at = (confidence: number): number => energyMargin(carries, all, confidence).value;
        expect(at(0.5)).toBeGreaterThanOrEqual(at(0.9) - tolerance);
        expect(at(0.9)).toBeGreaterThanOrEqual(at(1) - tolerance);
      }),
    );
  });

  it('walks a few hundred of two hundred histories, not thousands', () => {
    // 200 histories, each a tenth of a per cent of a factor apart: the hardest to tell from each other.
    const { carries, all, asked } = histories(
      Array.from({ length: 200 }, (_, at) => 1 + ((at * 77) % 200) / 250),
    );
    energyMargin(carries, all, 0.9);
    expect(asked.walks).toBeLessThan(700);
  });
});
