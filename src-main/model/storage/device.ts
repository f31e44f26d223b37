import type { DeviceUse } from '../../../shared-types/item.ts';
import type { SinkPort } from '../../../shared-types/port.ts';
import type { RidesWhere } from './cell-warmth.ts';

/** What the rider is doing during a step. The order is the index of the use table. */
export const activities = ['night', 'evening', 'riding', 'stop'] as const;
export type Activity = (typeof activities)[number];

/** A device with its batteries. Zero capacity is a direct load, fed while it runs or not at all. */
export interface DeviceModel {
  readonly label: string;
  /** Order of equals: a device's id, so that results never hang on the order of a list. */
  readonly key: string;
  readonly mustHave: boolean;
  /** Of all its batteries together; the rider swaps a full spare in when one is empty. */
  readonly capacityWh: number;
  /** Of the one battery that charges at a time. */
  readonly batteryWh: number;
  readonly input: SinkPort;
  /** Wh stored per Wh at the plug. */
  readonly efficiencyIn: number;
  /** Drawn at the plug on top of all else while it is charged in use, W. */
  readonly pluggedW: number;
  readonly ridesWhere: RidesWhere;
  /** W drawn in each activity, in the order of `activities`. */
  readonly useW: readonly [number, number, number, number];
}

/** Charging loss of a device's own electronics and cell (common practice, no source: 0.85 to 0.90). */
export const deviceEfficiencyIn = 0.88;

const hoursPerDay = 24;

/** Use in W by activity; a figure per day is spread evenly over its 24 hours. */
export function useByActivityW(use: DeviceUse): readonly [number, number, number, number] {
  if (use.as === 'activity') return [use.nightW, use.eveningW, use.ridingW, use.stopW];
  const evenW = use.whPerDay / hoursPerDay;
  return [evenW, evenW, evenW, evenW];
}
