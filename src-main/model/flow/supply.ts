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
  /** Share of the step an outlet is there and free, 0..1. */
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
    outletShare[step] = timeline.outletTime[step]! * (luck < 0 ? 1 : history.outletShare[luck]!);
    const ridingShare = timeline.activityShare[step * activities.length + ridingIndex]!;
    hubW[step] = hubPlugW[timeline.leg[step]!]! * ridingShare;
    if (panels.length === 0) continue;
    const campShare = timeline.campShare[step]!;
    const powerW = (aim: PanelAim | 'packed', lightShare: number): number =>
      panelsW(light, timeline, step, panels, aim, lightShare);
    panelW[step] =
      ridingShare * powerW(placement.whileRiding, placement.rackFactor) +
      campShare * powerW(placement.inCamp, 1) +
      (1 - ridingShare - campShare) * powerW(placement.atStops, 1);
  }
  return { panelW, hubW, outletShare };
}

function panelsW(
  light: readonly DayLight[],
  timeline: Timeline,
  step: number,
  panels: readonly PanelModel[],
  aim: PanelAim | 'packed',
  lightShare: number,
): number {
  if (aim === 'packed') return 0;
  const day = light[Math.floor(step / timeline.stepsPerDay)]!;
  const stepOfDay = step % timeline.stepsPerDay;
  const irradiance = day.panelWm2[aim][stepOfDay]! * lightShare;
  const air = day.airDegC[stepOfDay]!;
  return panels.reduce((sum, panel) => sum + plugPowerW(irradiance, air, panel), 0);
}
