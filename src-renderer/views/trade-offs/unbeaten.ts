import type { ScenarioResult } from '../../../shared-types/comparison.ts';

/** What a scenario costs, weighs and leaves to spare. */
type Weighed = Pick<ScenarioResult, 'values' | 'margin'>;

/** At least as good in price, grams and energy margin, and better in one of them. */
function beats(one: Weighed, other: Weighed): boolean {
  const noWorse =
    one.values.cost <= other.values.cost &&
    one.values.grams <= other.values.grams &&
    one.margin.value >= other.margin.value;
  const better =
    one.values.cost < other.values.cost ||
    one.values.grams < other.values.grams ||
    one.margin.value > other.margin.value;
  return noWorse && better;
}

/** Scenarios that no other beats on price, grams and energy margin together: the non-dominated line, cheapest first. */
export function unbeatenScenarios<S extends Weighed>(scenarios: readonly S[]): readonly S[] {
  return scenarios
    .filter((scenario) => !scenarios.some((other) => beats(other, scenario)))
    .toSorted((a, b) => a.values.cost - b.values.cost || a.values.grams - b.values.grams);
}
