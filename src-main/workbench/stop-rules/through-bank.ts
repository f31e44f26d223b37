import type { ItemOf } from '../../../shared-types/item.ts';
import type { Rules } from '../../../shared-types/scenario.ts';
import { deviceEfficiencyIn } from '../../model/storage/device.ts';
import type { CarriedItem } from '../assemble/kit.ts';
import { reachesDevices } from '../assemble/plug-need.ts';

export type BankLine = CarriedItem<ItemOf<'bank'>>;

/**
 * Share of what panel and hub give at their plugs that comes to the devices' plugs, 0..1: all where they feed devices too, what the
 * first bank passes on where they may not.
 */
export function throughBank(rules: Rules, lines: readonly CarriedItem[]): number {
  return reachesDevices(rules, lines) / deviceEfficiencyIn;
}

/** Share of what passes through a bank that is lost in it, 0..1. */
export function lostInBank({ item }: BankLine): number {
  return 1 - item.efficiencyIn * item.efficiencyOut;
}
