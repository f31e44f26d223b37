import type { DeviceModel } from '../storage/device.ts';
import type { Timeline } from './timeline.ts';

/** What the devices ask for on a mean day of the tour, Wh, at their own batteries. */
export function meanDemandWhPerDay(devices: readonly DeviceModel[], timeline: Timeline): number {
  let wh = 0;
  for (const device of devices) {
    for (const activity of timeline.activity) wh += device.useW[activity]! * timeline.stepHours;
  }
  return wh / timeline.days;
}
