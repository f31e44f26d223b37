import type { ScenarioResult } from '../../shared-types/comparison.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import { compareScenario } from './compare-scenario.ts';
import type { ComparisonGround, DrawnTours } from './ground.ts';
import { shareOfWalks, type Job } from './job.ts';

/** One scenario to simulate with its whole record. */
export interface ScenarioJob {
  readonly ground: ComparisonGround;
  readonly scenario: Scenario;
}

/** Walks that a scenario takes as a rule: once through the histories, the margins, other walls, and the other order at them. */
const passes = 6;

/** Simulates scenarios one after the other; those of the same ground share the drawn tour. */
export function scenarioJob(tours: DrawnTours): Job<ScenarioJob, ScenarioResult> {
  return ({ ground, scenario }, onShare) => {
    const onWalk = shareOfWalks(passes * ground.settings.sky.histories, onShare);
    return compareScenario(scenario, tours(ground), ground, onWalk);
  };
}
