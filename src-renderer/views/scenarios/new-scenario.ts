import {
  usualPlacement,
  usualRules,
  type Scenario,
  type ScenarioDraft,
} from '../../../shared-types/scenario.ts';
import { copyLabel } from '../../parts/text/copy-label.ts';
import { draftOf } from '../../state/draft-of.ts';

/** A scenario to start from: nothing carried, and the usual placement and rules (common practice, no source). */
export function startingScenario(): ScenarioDraft {
  return {
    label: 'New scenario',
    method: 'banks',
    kit: [],
    placement: usualPlacement,
    rules: usualRules,
    notes: '',
  };
}

export function copyOf(scenario: Scenario): ScenarioDraft {
  return { ...draftOf(scenario), label: copyLabel(scenario.label) };
}
