import type { FoundKit } from '../../../shared-types/kit-search.ts';
import type { Scenario, ScenarioDraft } from '../../../shared-types/scenario.ts';
import { kitLine } from './search-words.ts';

/** As long as a label may be. */
const mostLetters = 80;

/** A found kit as a scenario, with the placement and rules it was searched under. */
export function keptScenario(kit: FoundKit, like: Pick<Scenario, 'placement' | 'rules'>): ScenarioDraft {
  const line = kitLine(kit);
  return {
    label: line.length > mostLetters ? `${line.slice(0, mostLetters - 1)}…` : line,
    method: kit.method,
    kit: kit.items.map(({ itemId, quantity }) => ({ itemId, quantity })),
    placement: like.placement,
    rules: like.rules,
    notes: 'From the kit search.',
  };
}
