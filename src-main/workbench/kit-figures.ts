import type { CriterionValues } from '../../shared-types/comparison.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import { lookAhead } from '../model/flow/look-ahead.ts';
import { carriedItems } from './assemble/kit.ts';
import type { ComparedTour } from './compared-tour.ts';
import { daysWithoutWall } from './days-without-wall.ts';
import type { ComparisonGround } from './ground.ts';
import { costOf } from '../model/judge/cost.ts';
import { frontShares } from '../model/judge/front-load.ts';
import { massOf } from '../model/judge/mass.ts';
import { pricedLines, weighedLines } from './assemble/money-and-mass.ts';
import { criterionValues, minutesLostOf } from './criterion-values.ts';
import { readyScenario } from './simulate-scenario.ts';

/** What the judge weighs a kit by, without the record of its walks. */
export interface KitFigures {
  readonly scenarioId: string;
  readonly values: CriterionValues;
  /** The margin is the largest that is tried: the true one lies above it. */
  readonly capped: boolean;
}

/**
 * Finds the criteria of a scenario on a tour.
 *
 * @param asksDaysWithoutWall they cost as many walks as all the rest; not asked for, they are not known
 */
export function kitFigures(
  scenario: Scenario,
  tour: ComparedTour,
  ground: Pick<ComparisonGround, 'items' | 'settings'>,
  onWalk: () => void,
  asksDaysWithoutWall = true,
): KitFigures {
  const lines = carriedItems(scenario, ground.items);
  const mass = massOf(weighedLines(lines), frontShares(ground.settings.frontLoad));
  const cost = costOf(pricedLines(lines), ground.settings);
  const ready = readyScenario(scenario, tour, lines, mass.carriedG);
  const { margin, flat } = lookAhead(
    ready.network,
    ready.course,
    ready.histories,
    tour.risk.confidence,
    onWalk,
  );
  return {
    scenarioId: scenario.id,
    capped: margin.capped,
    values: criterionValues({
      cost,
      mass,
      margin: margin.value,
      risk: flat / ready.histories.length,
      minutesLost: minutesLostOf(tour.tour, ready.rides),
      daysWithoutWall: asksDaysWithoutWall ? daysWithoutWall(ready, tour, onWalk) : Number.NaN,
    }),
  };
}
