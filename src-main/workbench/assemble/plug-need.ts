import type { Rules } from '../../../shared-types/scenario.ts';
import { deviceEfficiencyIn } from '../../model/storage/device.ts';
import { ofKind, type CarriedItem } from './kit.ts';

/**
 * Share of what a hub gives at its plug that ends in the devices' batteries, 0..1: their own charging loss and, where a bank
 * stands between, that of the kit's first bank in and out. 0 where a bank must take it and there is none.
 */
export function reachesDevices(rules: Rules, lines: readonly CarriedItem[]): number {
  if (rules.unsteadySource === 'device-too') return deviceEfficiencyIn;
  const [bank] = ofKind(lines, 'bank');
  return bank === undefined ? 0 : bank.item.efficiencyIn * bank.item.efficiencyOut * deviceEfficiencyIn;
}
