import { sinkLimitW } from '../../storage/port-power.ts';
import { fullShare, storedAfterWh } from '../../storage/taper.ts';
import type { StopStore } from './situation.ts';

/** A store charged so far is left alone, Wh. */
export function fullWh({ capacityWh }: StopStore): number {
  return capacityWh * fullShare;
}

/**
 * What is stored after some time on a plug, Wh: by the closed form of the taper, until the store is full.
 *
 * @param storedWh before, 0..capacityWh
 * @param powerW at the plug, 0 or more
 * @param hours 0 or more
 */
export function chargedWh(store: StopStore, storedWh: number, powerW: number, hours: number): number {
  const after = storedAfterWh(
    storedWh,
    store.capacityWh,
    store.taperRoomWh,
    powerW * store.efficiencyIn,
    sinkLimitW(store.input) * store.efficiencyIn,
    hours,
  );
  return Math.min(after, Math.max(storedWh, fullWh(store)));
}
