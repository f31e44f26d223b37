import type { Station } from '../../shared-types/climate.ts';
import type { Item } from '../../shared-types/item.ts';
import type { RiskSettings, Settings } from '../../shared-types/settings.ts';
import type { Tour } from '../../shared-types/tour.ts';
import { drawDailyUse } from '../model/flow/histories/daily-use.ts';
import { drawOutletLuck } from '../model/flow/histories/outlet-luck.ts';
import { inServiceOrder } from '../model/flow/network.ts';
import type { DeviceModel } from '../model/storage/device.ts';
import { travellingDevices } from './assemble/kit.ts';
import { assembleTour, type TourModel } from './assemble/tour.ts';

/** A tour with its devices and all that chance decides on it: the same for every scenario, so that they are compared in pairs. */
export interface ComparedTour extends TourModel {
  readonly devices: readonly DeviceModel[];
  readonly risk: RiskSettings;
  /** By history: see `Draws`. */
  readonly outletIsFree: readonly Uint8Array[];
  readonly useScale: readonly Float32Array[];
}

/** @returns the index of the first leg whose station is not known, or the tour with its histories drawn */
export function drawComparedTour(
  tour: Tour,
  stations: readonly Station[],
  items: readonly Item[],
  settings: Pick<Settings, 'stepMinutes' | 'sky' | 'risk'>,
  sunScale = 1,
): ComparedTour | { readonly unknownStationInLeg: number } {
  const model = assembleTour(tour, stations, settings, sunScale);
  if ('unknownStationInLeg' in model) return model;
  const { histories, seed } = settings.sky;
  const devices = inServiceOrder(travellingDevices(items, tour.leftAtHome));
  const keys = devices.map(({ key }) => key);
  return {
    ...model,
    devices,
    risk: settings.risk,
    outletIsFree: drawOutletLuck(model.timeline.luckChance, histories, seed),
    useScale: drawDailyUse(keys, model.timeline.days, settings.risk.useSpread, histories, seed),
  };
}
