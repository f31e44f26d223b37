import { describe, expect, it } from 'vitest';
import type { Comparison, HubCost } from '../../../../shared-types/comparison.ts';
import { scenarioWithHub } from '../../../../src-renderer/views/inventory/scenario-with.ts';
import { demoComparison } from '../../support/demo-comparison.ts';
import { hubCost } from '../../support/hub-cost.ts';

function compared(cost: HubCost | null): Comparison {
  const comparison = demoComparison();
  const scenarios = comparison.scenarios.map((each) =>
    each.id === 'demo-hub' ? { ...each, hubCost: cost } : each,
  );
  return { ...comparison, scenarios };
}

describe('scenarioWithHub()', () => {
  it.each([
    ['before anything is compared', null, 'demo-hub-3'],
    ['for a hub that no scenario carries', compared(hubCost()), 'another-hub'],
    ['where its cost is not reckoned', compared(null), 'demo-hub-3'],
  ])('finds none %s', (_, comparison, hubId) => {
    expect(scenarioWithHub(comparison, hubId)).toBeNull();
  });

  it('finds the scenario that carries the hub', () => {
    expect(scenarioWithHub(compared(hubCost()), 'demo-hub-3')?.id).toBe('demo-hub');
  });
});
