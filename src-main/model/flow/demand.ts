import { activities, type DeviceModel } from '../storage/device.ts';
import type { Timeline } from './timeline.ts';

/** What the devices ask for on a mean day of the tour, Wh, at their own batteries. */
export function meanDemandWhPerDay(devices: readonly DeviceModel[], timeline: Timeline): number {
  let wh = 0;
  timeline.activityShare.forEach((share, index) => {
    for (const device of devices) wh += device.useW[index % activities.length]! * share * timeline.stepHours;
  });
  return wh / timeline.days;
}
