import type { Scenario } from '../../../shared-types/scenario.ts';
import { lookAhead } from '../../model/flow/look-ahead.ts';
import { costOf } from '../../model/judge/cost.ts';
import type { MapFigures } from '../../model/judge/break-even-map.ts';
import { frontShares } from '../../model/judge/front-load.ts';
import { massOf } from '../../model/judge/mass.ts';
import { carriedItems } from '../assemble/kit.ts';
import { pricedLines, weighedLines } from '../assemble/money-and-mass.ts';
import { timelineOf } from '../assemble/tour.ts';
import { criterionValues, minutesLostOf, type Judged } from '../criterion-values.ts';
import type { ComparedTour } from '../compared-tour.ts';
import type { ComparisonGround, DrawnTours } from '../ground.ts';
import { shareOfWalks, type Job } from '../job.ts';
import { readyScenario, type ReadyScenario } from '../simulate-scenario.ts';
import { withWallEvery } from '../walls-every.ts';

/** One length of a map under one scenario. */
export interface MapRowJob {
  /** Its tour has the length; other nights take the place of its own. */
  readonly ground: ComparisonGround;
  readonly scenario: Scenario;
  /** Days between nights with a wall, ascending, each to be tried. */
  readonly gapsDays: readonly number[];
}

/** Walks that a gap takes as a rule, by history: the plan, and the margin. */
const passes = 4;

/** Judges a scenario with other nights; sun, road and kit are laid out once for all of them. */
export function mapRowJob(tours: DrawnTours): Job<MapRowJob, readonly MapFigures[]> {
  return ({ ground, scenario, gapsDays }, onShare) => {
    const tour = tours(ground);
    const lines = carriedItems(scenario, ground.items);
    const mass = massOf(weighedLines(lines), frontShares(ground.settings.frontLoad));
    const cost = costOf(pricedLines(lines), ground.settings);
    const ready = readyScenario(scenario, tour, lines, mass.carriedG);
    const onWalk = shareOfWalks(passes * gapsDays.length * ready.histories.length, onShare);
    const looks = gapsDays.map((gapDays) => lookAt(gapDays, ready, tour, onWalk));
    const same = {
      cost,
      mass,
      minutesLost: minutesLostOf(tour.tour, ready.rides),
      daysWithoutWall: widestCarried(gapsDays, looks, tour.timeline.days),
    };
    return looks.map(({ margin, risk, capped }) => ({
      values: criterionValues({ ...same, margin, risk }),
      capped,
    }));
  };
}

const minutesPerHour = 60;

type Look = Pick<Judged, 'margin' | 'risk'> & Pick<MapFigures, 'capped'>;

function lookAt(
  gapDays: number,
  { network, histories, courseWith }: ReadyScenario,
  { tour, timeline, risk }: ComparedTour,
  onWalk: () => void,
): Look {
  const course = courseWith(timelineOf(withWallEvery(tour, gapDays), timeline.stepHours * minutesPerHour));
  const { margin, flat } = lookAhead(network, course, histories, risk.confidence, onWalk);
  return { margin: margin.value, capped: margin.capped, risk: flat / histories.length };
}

/** The widest of the gaps tried at which the plan is carried; the days of the tour when it needs no wall on the way, 0 when none. */
function widestCarried(gapsDays: readonly number[], looks: readonly Look[], days: number): number {
  const widest = gapsDays.findLast((_, index) => looks[index]!.margin >= 0) ?? 0;
  return Math.min(widest, days);
}
