import type { PanelSun, SunPeriod } from '../../../../shared-types/leg-sun.ts';
import type { Scenario } from '../../../../shared-types/scenario.ts';
import type { ShownSun } from '../../../state/leg-sun.svelte.ts';
import { sunFinding } from './finding.ts';
import { carriedFirst } from './panel-choice.ts';
import { riddenPeriods } from './periods.ts';

/** An answer as the screen reads it. */
export interface SunAnswer {
  readonly finding: string;
  /** Those the scenario carries first. */
  readonly panels: readonly PanelSun[];
  /** The periods the leg is ridden in. */
  readonly ridden: readonly SunPeriod[];
}

export function readAnswer(
  { question, leg, firstDate, sun }: ShownSun,
  scenarios: readonly Pick<Scenario, 'id' | 'kit'>[],
  locale?: string,
): SunAnswer {
  const { lying, by } = question;
  const placed = lying.as === 'scenario' ? scenarios.find(({ id }) => id === lying.scenarioId) : undefined;
  const carried = placed?.kit.map(({ itemId }) => itemId) ?? [];
  const panels = carriedFirst(sun.panels, carried);
  const ridden = riddenPeriods(sun.periods, by, firstDate, leg.days);
  return { finding: sunFinding({ ...sun, panels }, ridden, locale), panels, ridden };
}
