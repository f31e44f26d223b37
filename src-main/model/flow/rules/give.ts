import { storedAfterWh } from '../../storage/taper.ts';
import type { Network } from '../network.ts';
import { linkHours, linkMostWh, linkPowerW, linkTakenWh, type StepState } from '../step-state.ts';

/*
 * A sink has one socket. Sources that share it in a step share its full power: a weak one leaves room for the rest of it,
 * as if the rider swapped plugs. Each of these functions takes a link and leaves in it what was taken, Wh at the plug.
 */

/** Makes a link: its power, how long it may last, and the most its source has to give. */
export function setLink(state: StepState, powerW: number, hours: number, mostWh: number): void {
  state.link[linkPowerW] = powerW;
  state.link[linkHours] = hours;
  state.link[linkMostWh] = mostWh;
}

/**
 * Gives a device the power of the link: first what it is short of in this step, then its battery. What is left of its
 * socket bounds the time too.
 *
 * @param topUp false: only what it is short of
 */
export function giveDevice(network: Network, state: StepState, device: number, topUp: boolean): void {
  if (state.deficitWh[device] === 0) {
    if (topUp) fill(network, state, device);
    else state.link[linkTakenWh] = 0;
    return;
  }
  feedDeficit(network, state, device);
  if (!topUp) return;
  const direct = state.link[linkTakenWh]!;
  state.link[linkHours]! -= direct / state.link[linkPowerW]!;
  state.link[linkMostWh]! -= direct;
  fill(network, state, device);
  state.link[linkTakenWh]! += direct;
}

/** What is left below this is rounding, Wh. */
export const roundingWh = 1e-12;

function feedDeficit(network: Network, state: StepState, device: number): void {
  const { deficitWh, socketHours } = state;
  const powerW = state.link[linkPowerW]!;
  const mostWh = state.link[linkMostWh]!;
  const time = Math.min(state.link[linkHours]!, socketHours[device]!);
  const share = usefulShare(network, state, device);
  state.link[linkTakenWh] = 0;
  if (!(time > 0) || !(mostWh > 0) || share <= 0) return;
  const efficiency = network.efficiencyIn[device]! * share;
  const direct = Math.min(deficitWh[device]! / efficiency, powerW * time, mostWh);
  const left = deficitWh[device]! - direct * efficiency;
  deficitWh[device] = left < roundingWh ? 0 : left;
  socketHours[device]! -= direct / network.limitW[device]!;
  state.pluggedWh[device]! += direct * (1 - share);
  state.link[linkTakenWh] = direct;
}

/** Share of the power at the plug that does not go into what a device draws only for being plugged in while it is used. */
function usefulShare({ pluggedW }: Network, state: StepState, device: number): number {
  const extraW = pluggedW[device]!;
  return extraW === 0 || state.inUse[device] === 0 ? 1 : 1 - extraW / state.link[linkPowerW]!;
}

/** Fills a sink's cells from the link, where they are neither too cold nor too hot. */
export function fill(network: Network, state: StepState, sink: number): void {
  const { storedWh, socketHours } = state;
  const powerW = state.link[linkPowerW]!;
  const mostWh = state.link[linkMostWh]!;
  const time = Math.min(state.link[linkHours]!, socketHours[sink]!);
  state.link[linkTakenWh] = 0;
  if (!(time > 0) || !(powerW > 0) || !(mostWh > 0) || state.charges[sink] === 0) return;
  const share = network.hasPluggedDraw && sink < network.deviceCount ? usefulShare(network, state, sink) : 1;
  if (share <= 0) return;
  const fullEfficiency = network.efficiencyIn[sink]!;
  const efficiency = fullEfficiency * share;
  const before = storedWh[sink]!;
  const limitW = network.limitW[sink]!;
  const after = storedAfterWh(
    before,
    network.capacityWh[sink]!,
    network.taperRoomWh[sink]!,
    powerW * efficiency,
    limitW * fullEfficiency,
    time,
  );
  const stored = Math.min(after - before, mostWh * efficiency);
  const taken = stored / efficiency;
  storedWh[sink] = before + stored;
  socketHours[sink]! -= Math.min(mostWh, powerW * time) / limitW;
  if (share < 1) state.pluggedWh[sink]! += taken * (1 - share);
  state.link[linkTakenWh] = taken;
}

/**
 * Fills a bank's cells from the link, for as long as no other source does; one that can't charge while it serves has lost
 * the time it served too. The tail of a charge, when little flows, is no reason not to serve.
 */
export function fillBank(network: Network, state: StepState, bank: number): void {
  state.link[linkHours] = Math.min(state.link[linkHours]!, state.turnHours[bank]!);
  fill(network, state, network.deviceCount + bank);
  state.turnHours[bank]! -= state.link[linkTakenWh]! / state.link[linkPowerW]!;
}
