import type { Station } from '../../shared-types/climate.ts';
import type { ScenarioResult } from '../../shared-types/comparison.ts';
import type { Item } from '../../shared-types/item.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import type { Settings } from '../../shared-types/settings.ts';
import type { Tour } from '../../shared-types/tour.ts';
import { compareScenario } from './compare-scenario.ts';
import { drawComparedTour, type ComparedTour } from './compared-tour.ts';

/** What the scenarios of one comparison share; plain data, so that it can pass to a worker. */
export interface ComparisonGround {
  readonly runId: string;
  readonly tour: Tour;
  readonly items: readonly Item[];
  readonly stations: readonly Station[];
  readonly settings: Settings;
}

/** One scenario to simulate. */
export interface ScenarioJob extends ComparisonGround {
  readonly scenario: Scenario;
}

export type DoScenarioJob = (job: ScenarioJob, onWalk: () => void) => ScenarioResult;

/** Does jobs one after the other; those of the same run share the drawn tour. */
export function scenarioWorker(): DoScenarioJob {
  let drawn: { readonly runId: string; readonly tour: ComparedTour } | null = null;
  return (job, onWalk) => {
    if (drawn?.runId !== job.runId) drawn = { runId: job.runId, tour: drawTour(job) };
    return compareScenario(job.scenario, drawn.tour, job.items, job.settings.currency, onWalk);
  };
}

function drawTour({ tour, stations, items, settings }: ScenarioJob): ComparedTour {
  const drawn = drawComparedTour(tour, stations, items, settings);
  if ('unknownStationInLeg' in drawn)
    throw new Error(`Leg ${drawn.unknownStationInLeg + 1} names a climate station that is not in the list.`);
  return drawn;
}

/** Walks that a scenario takes as a rule: once through the histories, two margins, and the other order at walls. */
export function expectedWalks({ settings }: Pick<ComparisonGround, 'settings'>): number {
  const passes = 5;
  return passes * settings.sky.histories;
}
