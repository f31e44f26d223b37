import type { TourCourse } from '../course.ts';
import type { Network } from '../network.ts';
import { linkTakenWh, type StepState } from '../step-state.ts';
import { giveDevice, setLink } from './give.ts';
import { spareWh } from './reserve.ts';

/**
 * Rule 4: banks serve devices in order of need. A nice-to-have is filled once no must-have is low; where the banks can't
 * fill every must-have, only the neediest is filled at a time, so that a fast charger does not win what a slow one needs
 * more. With rationing, nice-to-haves get no more than the must-haves can spare, or what stands at the brim.
 *
 * @param topUp true at rest: low batteries are filled; false on the way: only a device that would run flat is plugged in
 */
export function serveFromBanks(
  network: Network,
  course: TourCourse,
  state: StepState,
  step: number,
  topUp: boolean,
): void {
  const { deviceCount, mustHave, lowWh, rations } = network;
  const { order, storedWh, deficitWh } = state;
  let waiting = false;
  let place = 0;
  state.spareWh[0] = Infinity;
  for (; place < deviceCount && mustHave[order[place]!] === 1; place += 1) {
    const d = order[place]!;
    const isLow = storedWh[d]! < lowWh[d]!;
    const fills = topUp && isLow && !(waiting && banksFallShort(network, state));
    if (fills || deficitWh[d]! > 0) serveDevice(network, state, d, fills);
    if (isLow) waiting ||= storedWh[d]! < lowWh[d]!;
  }
  let isReckoned = !rations;
  for (; place < deviceCount && state.spareWh[0] > 0; place += 1) {
    const d = order[place]!;
    const fills = topUp && !waiting && storedWh[d]! < lowWh[d]!;
    if (!fills && deficitWh[d] === 0) continue;
    if (!isReckoned) state.spareWh[0] = spareWh(network, course, state, step);
    isReckoned = true;
    serveDevice(network, state, d, fills);
  }
}

/** Whether all banks together hold less, at the plug, than the must-haves have room for. */
function banksFallShort(network: Network, state: StepState): boolean {
  const { deviceCount, bankCount } = network;
  let spareWh = 0;
  for (let b = 0; b < bankCount; b += 1)
    spareWh += state.storedWh[deviceCount + b]! * network.efficiencyOut[b]!;
  for (let d = 0; d < deviceCount; d += 1) {
    if (network.mustHave[d] === 0) continue;
    spareWh -= (network.capacityWh[d]! - state.storedWh[d]!) / network.efficiencyIn[d]!;
  }
  return spareWh < 0;
}

/** Bank after bank serves a device, as far as there is anything to spare. */
function serveDevice(network: Network, state: StepState, device: number, fills: boolean): void {
  const { bankCount } = network;
  for (let rank = 0; rank < bankCount; rank += 1) {
    if (!(state.spareWh[0]! > 0) || !(state.socketHours[device]! > 0)) return;
    serve(network, state, network.serveOrder[device * bankCount + rank]!, device, fills);
  }
}

/** A bank that can't charge while it serves has its time for one or the other. */
function serve(network: Network, state: StepState, bank: number, device: number, fills: boolean): void {
  const { storedWh, outletHours, turnHours } = state;
  const sink = network.deviceCount + bank;
  const efficiency = network.efficiencyOut[bank]!;
  const usableWh = storedWh[sink]! - state.unreachableWh[sink]!;
  if (usableWh <= 0) return;
  const takesTurns = network.chargesWhileServing[bank] === 0;
  const hours = takesTurns ? Math.min(outletHours[bank]!, turnHours[bank]!) : outletHours[bank]!;
  const powerW = network.serveLinkW[bank * network.deviceCount + device]!;
  setLink(state, powerW, hours, Math.min(state.spareWh[0]!, usableWh * efficiency));
  giveDevice(network, state, device, fills);
  const given = state.link[linkTakenWh]!;
  if (given === 0) return;
  const busy = given / powerW;
  storedWh[sink] = Math.max(0, storedWh[sink]! - given / efficiency);
  outletHours[bank]! -= busy;
  if (takesTurns) turnHours[bank]! -= busy;
  state.spareWh[0]! -= given;
  state.servedWh[bank * network.deviceCount + device]! += given;
}
