import { fliesAsPacked } from '../../../shared-types/air-check.ts';
import type { Scenario } from '../../../shared-types/scenario.ts';
import { ownFactors } from '../../model/flow/own-factors.ts';
import { airCheck } from '../../model/judge/air-transport.ts';
import { costOf } from '../../model/judge/cost.ts';
import { frontShares } from '../../model/judge/front-load.ts';
import { massOf } from '../../model/judge/mass.ts';
import type { KitOnTour } from '../../model/judge/upgrade.ts';
import { airLines } from '../assemble/air-lines.ts';
import { carriedItems } from '../assemble/kit.ts';
import { pricedLines, weighedLines } from '../assemble/money-and-mass.ts';
import { criterionValues, minutesLostOf } from '../criterion-values.ts';
import { daysWithoutWall, nightsNeeded } from '../days-without-wall.ts';
import type { ComparisonGround, DrawnTours } from '../ground.ts';
import { shareOfWalks, type Job } from '../job.ts';
import { readyScenario } from '../simulate-scenario.ts';

/** A kit to walk through one tour, history by history. */
export interface UpgradeJob {
  readonly ground: ComparisonGround;
  readonly scenario: Scenario;
}

/** Walks a history takes as a rule: its own factor, and other walls. */
const passes = 13;

/** Finds each history's own factor for a kit, and what else the judge weighs it by. */
export function upgradeJob(tours: DrawnTours): Job<UpgradeJob, KitOnTour> {
  return ({ ground, scenario }, onShare) => {
    const { items, settings } = ground;
    const tour = tours(ground);
    const lines = carriedItems(scenario, items);
    const mass = massOf(weighedLines(lines), frontShares(settings.frontLoad));
    const ready = readyScenario(scenario, tour, lines, mass.carriedG);
    const onWalk = shareOfWalks(passes * ready.histories.length, onShare);
    const gapDays = daysWithoutWall(ready, tour, onWalk);
    return {
      factors: ownFactors(ready.network, ready.course, ready.histories, onWalk),
      nightsNeeded: nightsNeeded(gapDays, tour.timeline.days),
      airborne: fliesAsPacked(airCheck(airLines(lines, items, tour.tour.leftAtHome))),
      values: criterionValues({
        cost: costOf(pricedLines(lines), settings),
        mass,
        minutesLost: minutesLostOf(tour.tour, ready.rides),
        daysWithoutWall: gapDays,
        // Found on the pairs, when both kits are walked.
        ...{ margin: Number.NaN, risk: Number.NaN },
      }),
    };
  };
}
