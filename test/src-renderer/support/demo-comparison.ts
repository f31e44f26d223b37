import type { Comparison, ScenarioResult } from '../../../shared-types/comparison.ts';
import { fakeComparison } from './fake-comparison.ts';
import { demoCatalogue } from './fake-workbench.ts';

/** The demo, compared by the fake. */
export function demoComparison(): Comparison {
  const { tours, scenarios, items, settings } = demoCatalogue();
  return fakeComparison(tours[0]!, scenarios, items, settings);
}

/** One scenario of the demo, with what a test wants otherwise. */
export function demoResult(id: string, change: Partial<ScenarioResult> = {}): ScenarioResult {
  const result = demoComparison().scenarios.find((each) => each.id === id);
  if (result === undefined) throw new Error(`the demo has no scenario ${id}`);
  return { ...result, ...change };
}
