import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unbeatenScenarios } from '../../../../src-renderer/views/trade-offs/unbeaten.ts';
import { demoResult } from '../../support/demo-comparison.ts';

const demo = demoResult('demo-banks');

function scenario(cost: number, grams: number, margin: number) {
  return {
    values: { ...demo.values, cost, grams },
    margin: { ...demo.margin, value: margin },
  };
}

const anyScenario = fc
  .tuple(fc.integer({ min: 0, max: 4 }), fc.integer({ min: 0, max: 4 }), fc.integer({ min: -1, max: 3 }))
  .map(([cost, grams, margin]) => scenario(cost, grams, margin));

describe('scenarios that no other beats', () => {
  it('stand with the cheapest first, and leave out what costs and weighs more for no more margin', () => {
    const [cheap, light, beaten] = [scenario(0, 900, 0.2), scenario(80, 400, 0.2), scenario(90, 900, 0.1)];
    expect(unbeatenScenarios([beaten, light, cheap])).toEqual([cheap, light]);
  });

  it('keep a dearer and heavier one that has more to spare, and equals', () => {
    const [plain, ample] = [scenario(10, 500, 0.1), scenario(20, 600, 0.5)];
    expect(unbeatenScenarios([ample, plain])).toEqual([plain, ample]);
    expect(unbeatenScenarios([plain, plain])).toHaveLength(2);
  });

  it('are never none, and whatever is left out is beaten by one of them', () => {
    fc.assert(
      fc.property(fc.array(anyScenario, { minLength: 1, maxLength: 6 }), (all) => {
        const kept = unbeatenScenarios(all);
        expect(kept.length).toBeGreaterThan(0);
        for (const each of all.filter((one) => !kept.includes(one)))
          expect(
            kept.some(
              (other) =>
                other.values.cost <= each.values.cost &&
                other.values.grams <= each.values.grams &&
                other.margin.value >= each.margin.value,
            ),
          ).toBe(true);
      }),
      { seed: 7, numRuns: 300 },
    );
  });
});
