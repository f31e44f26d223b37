import { describe, expect, it } from 'vitest';
import { allAssumptions } from '../../shared-types/all-assumptions.ts';
import type { Assumption } from '../../shared-types/comparison.ts';
import { comparisonFixture, scenarioFixture } from '../support/comparison-fixture.ts';

const named = (name: string): Assumption => ({ name, value: '1', basis: 'label', source: 'test' });

describe('allAssumptions()', () => {
  it('names the common ones first, then each scenario’s own once', () => {
    const comparison = comparisonFixture({
      assumptions: [named('Sky')],
      scenarios: [
        scenarioFixture('banks', { assumptions: [named('Bank')] }),
        scenarioFixture('hub', { assumptions: [named('Bank'), named('Hub')] }),
      ],
    });
    const all = allAssumptions(comparison);
    expect(all.map(({ name }) => name)).toEqual(['Sky', 'Bank', 'Hub']);
    // What all scenarios carry is no scenario's own.
    expect(all.map(({ usedBy }) => usedBy)).toEqual([null, null, [comparison.scenarios[1]!.label]]);
  });
});
