import type { Comparison, ScenarioResult } from '../../../shared-types/comparison.ts';

/** The first scenario compared that carries this hub; null where none does. */
export function scenarioWithHub(comparison: Comparison | null, hubId: string): ScenarioResult | null {
  const carrying = comparison?.scenarios.find(
    ({ hubCost, mass }) => hubCost !== null && mass.lines.some(({ itemId }) => itemId === hubId),
  );
  return carrying ?? null;
}
