import type { Scenario } from '../../shared-types/scenario.ts';
import type { ComparisonGround, DrawnTours } from './ground.ts';
import { shareOfWalks, type Job } from './job.ts';
import { kitFigures, type KitFigures } from './kit-figures.ts';

/** One scenario to judge without a record. */
export interface FiguresJob {
  readonly ground: ComparisonGround;
  readonly scenario: Scenario;
  readonly asksDaysWithoutWall: boolean;
}

/** Walks it takes as a rule: the plan and the margin; other walls as many again. */
const passes = { energy: 3, walls: 2 } as const;

export function figuresJob(tours: DrawnTours): Job<FiguresJob, KitFigures> {
  return ({ ground, scenario, asksDaysWithoutWall }, onShare) => {
    const expected = passes.energy + (asksDaysWithoutWall ? passes.walls : 0);
    const onWalk = shareOfWalks(expected * ground.settings.sky.histories, onShare);
    return kitFigures(scenario, tours(ground), ground, onWalk, asksDaysWithoutWall);
  };
}
