import type { DayLedger, LegYield } from '../../../shared-types/comparison.ts';
import type { Rules } from '../../../shared-types/scenario.ts';
import type { Tour } from '../../../shared-types/tour.ts';
import type { Timeline } from '../../model/flow/timeline.ts';
import type { CarriedItem } from '../assemble/kit.ts';
import type { ReadyScenario } from '../simulate-scenario.ts';

/** What the stop rules of a scenario are drawn from. */
export interface RulesGround {
  readonly rules: Rules;
  readonly lines: readonly CarriedItem[];
  readonly tour: Pick<Tour, 'legs'>;
  readonly timeline: Timeline;
  readonly ready: Pick<ReadyScenario, 'network' | 'course'>;
  readonly legs: readonly Pick<LegYield, 'leg' | 'days' | 'panelWh' | 'hubWh' | 'risk'>[];
  /** By day of the tour. */
  readonly days: readonly Pick<DayLedger, 'panel' | 'hub'>[];
}
