import type { DayLight, PanelAim } from '../sun/day-light.ts';
import { plugPowerW, type PanelModel } from '../sun/panel.ts';
import { activities } from '../storage/device.ts';
import type { History } from './history.ts';
import type { Timeline } from './timeline.ts';

/** How a panel lies through the day; `packed` gives nothing. */
export interface PanelPlacement {
  readonly whileRiding: PanelAim | 'packed';
  readonly atStops: PanelAim | 'packed';
  readonly inCamp: PanelAim | 'packed';
  /** Share of the light left while riding, 0..1. */
  readonly rackFactor: number;
}

/** What sun, wheel and walls offer in one history, at the plug. One entry a step. */
export interface Supply {
  readonly panelW: Float64Array;
  readonly hubW: Float64Array;
  /** Share of the step an outlet is there, 0..1. */
  readonly outletShare: Float64Array;
}

const ridingIndex = activities.indexOf('riding');

/**
 * What one history offers a scenario.
 *
 * @param light of each day of the tour
 * @param hubPlugW mean power while riding, by leg
 */
export function buildSupply(
  timeline: Timeline,
  history: History,
  light: readonly DayLight[],
  panels: readonly PanelModel[],
  placement: PanelPlacement,
  hubPlugW: readonly number[],
): Supply {
  const panelW = new Float64Array(timeline.steps);
  const hubW = new Float64Array(timeline.steps);
  const outletShare = new Float64Array(timeline.steps);
  for (let step = 0; step < timeline.steps; step += 1) {
    const luck = timeline.luck[step]!;
    outletShare[step] = luck < 0 ? 1 : history.outletShare[luck]!;
    if (timeline.activity[step] === ridingIndex) hubW[step] = hubPlugW[timeline.leg[step]!]!;
    const day = light[Math.floor(step / timeline.stepsPerDay)]!;
    panelW[step] = panelsW(day, step % timeline.stepsPerDay, panels, lying(timeline, step, placement));
  }
  return { panelW, hubW, outletShare };
}

interface Lying {
  readonly aim: PanelAim | 'packed';
  readonly lightShare: number;
}

function lying(timeline: Timeline, step: number, placement: PanelPlacement): Lying {
  if (timeline.activity[step] === ridingIndex) {
    return { aim: placement.whileRiding, lightShare: placement.rackFactor };
  }
  return { aim: timeline.inCamp[step] === 1 ? placement.inCamp : placement.atStops, lightShare: 1 };
}

function panelsW(day: DayLight, stepOfDay: number, panels: readonly PanelModel[], how: Lying): number {
  if (how.aim === 'packed') return 0;
  const irradiance = day.panelWm2[how.aim][stepOfDay]! * how.lightShare;
  const air = day.airDegC[stepOfDay]!;
  return panels.reduce((sum, panel) => sum + plugPowerW(irradiance, air, panel), 0);
}
