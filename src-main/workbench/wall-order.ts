import type { WallOrderChange } from '../../shared-types/comparison.ts';
import type { DayAccount } from '../model/flow/record/accounts.ts';
import { meanOverTourWh } from '../model/flow/record/over-tour.ts';
import { recordHistories } from '../model/flow/record/record-histories.ts';
import type { ReadyScenario } from './simulate-scenario.ts';

/** Histories that settle the difference between two orders: they are walked in pairs. */
const enoughHistories = 25;

/** What the other order at a wall would change; null where the order makes no odds: no bank, no device, or no wall on the way. */
export function wallOrderChange(
  { network, course, histories }: ReadyScenario,
  onWalk: () => void,
): WallOrderChange | null {
  if (network.bankCount === 0 || network.deviceCount === 0 || network.portCount === 0) return null;
  const pairs = histories.slice(0, enoughHistories);
  const chosen = recordHistories(network, course, pairs, 1, onWalk);
  if (meanOverTourWh(chosen, 'wallDirect') + meanOverTourWh(chosen, 'wallToBanks') === 0) return null;
  const other = recordHistories({ ...network, banksFirst: !network.banksFirst }, course, pairs, 1, onWalk);
  const change = (account: DayAccount): number =>
    meanOverTourWh(other, account) - meanOverTourWh(chosen, account);
  return {
    other: network.banksFirst ? 'devices-first' : 'banks-first',
    lostWh: change('lost'),
    unservedWh: change('unserved'),
  };
}
