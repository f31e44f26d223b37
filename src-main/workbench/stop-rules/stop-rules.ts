import type { StopRules } from '../../../shared-types/stop-rules.ts';
import { bankLights } from './bank-lights.ts';
import { careSteps } from './care-steps.ts';
import { fillingSteps } from './filling-steps.ts';
import { hungriestLeg } from './plug-use.ts';
import type { RulesGround } from './rules-ground.ts';
import { savingSteps } from './saving-steps.ts';
import { stretchSteps } from './stretch-steps.ts';
import { postSteps, wallSteps } from './wall-steps.ts';

/** What to do at walls and between them with a kit on a tour, and what the lights of its banks tell. */
export function stopRules(ground: RulesGround): StopRules {
  const use = hungriestLeg(ground);
  return {
    steps: [...atWalls(ground), ...stretchSteps(ground), ...savingSteps(ground, use), ...careSteps(ground)],
    banks: bankLights(ground.lines, ground.rules, use),
    mustHaveWhPerDay: use.mustHaveWh,
    leg: use.leg,
  };
}

/** Nothing where the tour comes to no outlet, not even at a day stop. */
function atWalls(ground: RulesGround): readonly string[] {
  const { timeline, tour, ready } = ground;
  const stops = tour.legs.some(({ dayStops }) =>
    dayStops.some(({ outlets, chance }) => outlets * chance > 0),
  );
  if (!stops && !timeline.wallAfterDay.includes(1)) return [];
  if (ready.network.portCount === 0) return ['This kit has no wall charger: nothing is filled at a wall.'];
  return [...wallSteps(ground), ...fillingSteps(ground), ...postSteps(ground)];
}
