import { activities, type DeviceModel } from '../storage/device.ts';
import type { Timeline } from './timeline.ts';

/** What each device asks for in each step of the plan, Wh at its battery: entry `step * devices + device`. */
export function plannedUseWh(devices: readonly DeviceModel[], timeline: Timeline): Float64Array {
  const use = new Float64Array(timeline.steps * devices.length);
  for (let step = 0; step < timeline.steps; step += 1) {
    devices.forEach(({ useW }, d) => {
      let watts = 0;
      for (let a = 0; a < activities.length; a += 1)
        watts += useW[a]! * timeline.activityShare[step * activities.length + a]!;
      use[step * devices.length + d] = watts * timeline.stepHours;
    });
  }
  return use;
}

/** What the devices ask for on a mean day of the plan, Wh, at their own batteries. */
export function meanUseWhPerDay(devices: readonly DeviceModel[], timeline: Timeline): number {
  return plannedUseWh(devices, timeline).reduce((sum, wh) => sum + wh, 0) / timeline.days;
}
