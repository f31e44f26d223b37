import type { SinkPort } from '../../../../shared-types/port.ts';
import type { ChargerModel } from '../../storage/charger.ts';

/** In this order stores are served, and share a charger that can't give all of them what they take. */
export const ranks = ['must-have', 'nice-to-have', 'bank'] as const;
export type Rank = (typeof ranks)[number];

/** A device's batteries or a bank as the rider stops. Energy is counted inside the cells. */
export interface StopStore {
  /** Order of equals, so that a plan never hangs on the order of a list. */
  readonly key: string;
  readonly label: string;
  readonly rank: Rank;
  readonly capacityWh: number;
  /** Room left when a charge at full power begins to taper, Wh. */
  readonly taperRoomWh: number;
  readonly input: SinkPort;
  /** Stored per Wh at the plug, above 0 and up to 1. */
  readonly efficiencyIn: number;
  /** Now, 0..capacityWh. */
  readonly storedWh: number;
  /** Asked of a device's batteries until the next expected wall, Wh; 0 for a bank. */
  readonly needWh: number;
  /** Share of what is stored that ends in a device's battery: 1 for a device, out and in again for a bank. */
  readonly usableShare: number;
}

/** A wall charger with the words for it. */
export interface StopCharger extends ChargerModel {
  readonly label: string;
}

/**
 * A stop at a wall. Devices are not used while they hang on a plug, and no cells are too cold or too hot to charge: both
 * are out of scope. What a panel or a hub will give later is not counted.
 */
export interface StopSituation {
  readonly minutes: number;
  /** Free sockets in the wall, 0 or more. */
  readonly outlets: number;
  readonly stores: readonly StopStore[];
  readonly chargers: readonly StopCharger[];
}

const byKey = (a: { readonly key: string }, b: { readonly key: string }): number =>
  a.key < b.key ? -1 : a.key > b.key ? 1 : 0;

/** The same stop with its lists in the order of service. */
export function inOrder(situation: StopSituation): StopSituation {
  const place = ({ rank }: StopStore): number => ranks.indexOf(rank);
  return {
    ...situation,
    stores: [...situation.stores].sort((a, b) => place(a) - place(b) || byKey(a, b)),
    chargers: [...situation.chargers].sort((a, b) => b.totalW - a.totalW || byKey(a, b)),
  };
}
