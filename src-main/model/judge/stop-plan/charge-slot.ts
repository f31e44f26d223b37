import { chargedWh } from './charge.ts';
import type { Plugs } from './plugs.ts';
import type { StopStore } from './situation.ts';
import type { Hang } from './ways.ts';

/**
 * Charges what hangs on the plugs through one slot. A charger serves its stores in order, must-haves first: one that can't
 * give all it is asked for gives each what those before it leave, in the mean over the slot.
 *
 * @param storedWh by store, before the slot
 * @param hangs in the order of the stores
 * @param hours length of the slot, above 0
 * @returns by store, after the slot
 */
export function chargeSlot(
  stores: readonly StopStore[],
  { classes, totalsW }: Pick<Plugs, 'classes' | 'totalsW'>,
  storedWh: readonly number[],
  hangs: readonly Hang[],
  hours: number,
): number[] {
  const after = [...storedWh];
  const leftW = [...totalsW];
  for (const { store, portClass, linkW } of hangs) {
    const { charger } = classes[portClass]!;
    const before = storedWh[store]!;
    after[store] = chargedWh(stores[store]!, before, Math.min(linkW, leftW[charger]!), hours);
    const drawnWh = (after[store] - before) / stores[store]!.efficiencyIn;
    leftW[charger] = Math.max(0, leftW[charger]! - drawnWh / hours);
  }
  return after;
}
