import { usualPlacement } from '../../shared-types/scenario.ts';
import { panelHistories } from '../../src-main/model/flow/histories/panel-histories.ts';
import { simulate } from '../../src-main/model/flow/simulate.ts';
import { placementModel } from '../../src-main/workbench/assemble/sky.ts';
import { benchTour } from '../support/bench-tour.ts';
import { climateAt, laidOn, panel20, skiesOf, sunAt } from '../support/sun-fixture.ts';
import { medianMs } from './measure.ts';

const confidence = 0.9;
/** Weak enough that the margin is bracketed and not capped. */
const panel = { ...panel20, ratedW: 5 };
const day = { ridingHours: 6, stops: [{ label: 'Stop', hours: 1 }] };

/**
 * What the model does for one scenario of the tour that the run loop is timed on, 200 histories: panels laid and lit by the
 * drawn skies, the walk with its record, and both margins; ms. Left out: what is drawn once for all scenarios (weather, luck,
 * daily use), the ride, and the kit and course laid out, which take no share worth naming.
 */
export async function fullScenarioMs(): Promise<number> {
  const { network, course, histories } = benchTour();
  const sun = sunAt(climateAt(50, 0.48), '2027-04-20', course.days, course.stepsPerDay);
  const skies = skiesOf(sun, histories.length);
  const placement = placementModel(usualPlacement);
  return medianMs(() => {
    const laid = laidOn(sun, [panel], placement, day);
    const { byHistory } = panelHistories(laid, sun, skies, course.stepsPerDay);
    const lit = byHistory.map((panelW, history) => ({ ...histories[history]!, panelW }));
    return simulate(network, course, lit, { confidence, pointsPerDay: course.stepsPerDay, onWalk() {} });
  });
}
