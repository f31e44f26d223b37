import { storedAfterWh } from '../storage/taper.ts';
import { account } from './ledger.ts';
import type { Network } from './network.ts';
import type { StepState } from './step-state.ts';

/**
 * Gives a device power at its plug for a while: first what it is short of in this step, then its battery.
 *
 * @param powerW of the link
 * @param hours at most; the device's own time left in the step bounds it too
 * @param mostWh the source has to give, at the plug
 * @param topUp false: only what it is short of
 * @returns Wh taken at the plug
 */
export function giveDevice(
  network: Network,
  state: StepState,
  device: number,
  powerW: number,
  hours: number,
  mostWh: number,
  topUp: boolean,
): number {
  const time = Math.min(hours, state.sinkHours[device]!);
  if (time <= 0 || powerW <= 0 || mostWh <= 0) return 0;
  const efficiency = network.efficiencyIn[device]!;
  const direct = Math.min(state.deficitWh[device]! / efficiency, powerW * time, mostWh);
  state.deficitWh[device]! -= direct * efficiency;
  state.row[account.used]! += direct * efficiency;
  state.row[account.lost]! += direct * (1 - efficiency);
  const directHours = direct / powerW;
  state.sinkHours[device]! -= directHours;
  if (!topUp) return direct;
  return direct + giveStore(network, state, device, powerW, time - directHours, mostWh - direct);
}

/** Fills a sink's cells for a while; arguments and result as for `giveDevice`. */
export function giveStore(
  network: Network,
  state: StepState,
  sink: number,
  powerW: number,
  hours: number,
  mostWh: number,
): number {
  const time = Math.min(hours, state.sinkHours[sink]!);
  if (time <= 0 || powerW <= 0 || mostWh <= 0) return 0;
  const efficiency = network.efficiencyIn[sink]!;
  const before = state.storedWh[sink]!;
  const limitW = network.limitW[sink]! * efficiency;
  const reached = storedAfterWh(before, network.capacityWh[sink]!, powerW * efficiency, limitW, time);
  const stored = Math.min(reached - before, mostWh * efficiency);
  state.storedWh[sink] = before + stored;
  state.sinkHours[sink]! -= time;
  const taken = stored / efficiency;
  state.row[account.lost]! += taken - stored;
  return taken;
}
