import { randomUUID } from 'node:crypto';
import type { Scenario } from '../../../shared-types/scenario.ts';
import type { MapFigures, MappedScenario } from '../../model/judge/break-even-map.ts';
import { scenarioFlies } from '../assemble/air-lines.ts';
import type { Crew, CrewRun, Watch } from '../crew.ts';
import type { ComparisonGround } from '../ground.ts';
import { differentGaps, type MapPlan } from './map-grid.ts';
import type { MapRowJob } from './map-row-job.ts';
import type { MapSubject } from './map-subject.ts';
import { mapTour } from './map-tour.ts';

/** Finds the figures of every scenario on every tour of a map: a job for each length and scenario. */
export function drawMap(
  subject: MapSubject,
  plan: MapPlan,
  crew: Crew,
  onShare: (share: number) => void,
): CrewRun<MappedScenario> {
  const inputs = rowJobs(subject, plan);
  const run = crew.start('map-row', inputs, shareOfDays(inputs, onShare));
  return { results: gathered(run, inputs, subject, plan), cancel: () => run.cancel() };
}

/** Tells how far a run is by the days of its rows, since those of a short tour are done at once; it never goes back. */
function shareOfDays(
  inputs: readonly RowJob[],
  onShare: (share: number) => void,
): Watch<readonly MapFigures[]> {
  const days = inputs.reduce((sum, input) => sum + input.days, 0);
  const open = new Set(inputs.keys());
  let [done, told] = [0, 0];
  return {
    onProgress: (share) => {
      const begun = share * inputs.length - (inputs.length - open.size);
      // Rows under way are about as long as the first of them: they are done in order.
      const [longest] = open;
      const underWay = longest === undefined ? 0 : begun * inputs[longest]!.days;
      told = Math.max(told, Math.min(1, (done + underWay) / days));
      onShare(told);
    },
    onResult: (_, index) => {
      open.delete(index);
      done += inputs[index]!.days;
    },
  };
}

interface RowJob extends MapRowJob {
  readonly days: number;
}

/** Longest first, so that threads end together; those of a length together, so that a thread draws its weather once. */
function rowJobs({ ground, leg, scenarios }: MapSubject, plan: MapPlan): readonly RowJob[] {
  return plan.days.toReversed().flatMap((days) => {
    const row = groundOf(ground, leg, days, plan);
    return scenarios.map((scenario) => ({
      days,
      ground: row,
      scenario,
      gapsDays: differentGaps(plan, days),
    }));
  });
}

function groundOf(ground: ComparisonGround, leg: number, days: number, plan: MapPlan): ComparisonGround {
  const { settings } = ground;
  return {
    ...ground,
    groundId: randomUUID(),
    tour: mapTour(ground.tour, leg, days),
    settings: {
      ...settings,
      stepMinutes: plan.stepMinutes,
      sky: { ...settings.sky, histories: plan.histories },
    },
  };
}

async function gathered(
  run: CrewRun<readonly MapFigures[]>,
  inputs: readonly RowJob[],
  { ground, scenarios }: MapSubject,
  plan: MapPlan,
): Promise<readonly MappedScenario[] | null> {
  const results = await run.results;
  if (results === null) return null;
  const rowOf = (scenario: Scenario, days: number): readonly MapFigures[] => {
    const index = inputs.findIndex((input) => input.scenario === scenario && input.days === days);
    return plan.gapsDays.map((gap) => {
      const tried = inputs[index]!.gapsDays;
      const at = tried.indexOf(gap);
      // Without a wall on the way all wider gaps are the same tour.
      return results[index]![at < 0 ? tried.length - 1 : at]!;
    });
  };
  return scenarios.map((scenario) => ({
    id: scenario.id,
    airborne: scenarioFlies(scenario, ground),
    figures: plan.days.map((days) => rowOf(scenario, days)),
  }));
}
