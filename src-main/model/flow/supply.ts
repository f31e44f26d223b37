import { activityIndex } from './day-schedule.ts';
import { activities } from '../storage/device.ts';
import type { Timeline } from './timeline.ts';

/** What sun, wheel and walls offer in one history, at the plug. One entry a step. */
export interface Supply {
  readonly panelW: Float64Array;
  readonly hubW: Float64Array;
  /** Share of the step an outlet is there and free, 0..1. */
  readonly outletShare: Float64Array;
}

/**
 * What one history offers a scenario.
 *
 * @param panelW power of all panels at their plugs, by step
 * @param hubPlugW mean power while riding, by day of the tour
 * @param luck for each draw of outlet luck: the share of the stop with a free outlet, 0..1
 */
export function buildSupply(
  timeline: Timeline,
  panelW: Float64Array,
  hubPlugW: readonly number[],
  luck: Float64Array,
): Supply {
  const hubW = new Float64Array(timeline.steps);
  const outletShare = new Float64Array(timeline.steps);
  for (let step = 0; step < timeline.steps; step += 1) {
    const draw = timeline.luck[step]!;
    outletShare[step] = timeline.outletTime[step]! * (draw < 0 ? 1 : luck[draw]!);
    const ridingShare = timeline.activityShare[step * activities.length + activityIndex('riding')]!;
    hubW[step] = hubPlugW[Math.floor(step / timeline.stepsPerDay)]! * ridingShare;
  }
  return { panelW, hubW, outletShare };
}
