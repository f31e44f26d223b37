import type { Comparison, ScenarioResult } from './comparison.ts';
import type { Criterion, CriterionScale } from './settings.ts';

/** The range that one column's small axes share. */
export interface StripScale {
  readonly from: number;
  readonly to: number;
}

/** Room left at both ends, so that a mark on the edge is drawn whole. */
const edgePct = 6;

/** Everything known that the column shows lies inside: the values, how far they usually reach, and the rider's two limits. */
export function stripScale(comparison: Comparison, criterion: Criterion, limits: CriterionScale): StripScale {
  const shown = comparison.scenarios.flatMap((scenario) => valuesShown(scenario, criterion));
  const all = [...shown, limits.satisfied, limits.unacceptable].filter(Number.isFinite);
  const from = Math.min(...all);
  const to = Math.max(...all);
  return from === to ? { from: from - 1, to: to + 1 } : { from, to };
}

function valuesShown(scenario: ScenarioResult, criterion: Criterion): readonly number[] {
  const value = scenario.values[criterion];
  return criterion === 'margin' ? [value, scenario.margin.usual] : [value];
}

/** Where a value stands on the axis, per cent of its width. */
export function placeOn({ from, to }: StripScale, value: number): number {
  const share = Math.min(1, Math.max(0, (value - from) / (to - from)));
  return edgePct + share * (100 - 2 * edgePct);
}
