import { activities } from '../storage/device.ts';
import { giveDevice, giveStore } from './give.ts';
import { account } from './ledger.ts';
import type { Network } from './network.ts';
import type { StepState } from './step-state.ts';

/*
 * The rules of one step, in the order they are applied. Each is one function on the flat state; none allocates.
 */

/**
 * Rule 1: every device runs on its own battery; what is left over is its deficit of this step.
 *
 * @param activityShare share of time in each activity, from `offset` on
 */
export function useOwnBatteries(
  network: Network,
  state: StepState,
  activityShare: Float64Array,
  offset: number,
  useFactor: number,
  hours: number,
): void {
  const kinds = activities.length;
  for (let d = 0; d < network.deviceCount; d += 1) {
    let useW = 0;
    for (let a = 0; a < kinds; a += 1) useW += network.useW[d * kinds + a]! * activityShare[offset + a]!;
    const needWh = useW * useFactor * hours;
    const fromBattery = Math.min(needWh, state.storedWh[d]!);
    state.storedWh[d]! -= fromBattery;
    state.deficitWh[d] = needWh - fromBattery;
    state.row[account.demand]! += needWh;
    state.row[account.used]! += fromBattery;
  }
}

/**
 * Rule 2: at a wall, devices take ports in order of need, then banks (or banks first, if the rider says so). A charger is plugged in while there is an outlet for it; its ports share its
 * total power. A port that a filling sink leaves free goes to the next one within the step.
 *
 * @param outletShare share of the step the outlets are there, 0..1
 */
export function chargeAtWall(
  network: Network,
  state: StepState,
  outlets: number,
  outletShare: number,
  hours: number,
): void {
  if (outlets === 0 || outletShare <= 0) return;
  const there = hours * outletShare;
  state.portHours.fill(there);
  for (let c = 0; c < state.chargerWh.length; c += 1) {
    state.chargerWh[c] = c < outlets ? network.chargerTotalW[c]! * there : 0;
  }
  if (network.banksFirst) plugInBanks(network, state);
  for (const device of state.order) plugIn(network, state, device);
  if (!network.banksFirst) plugInBanks(network, state);
}

function plugInBanks(network: Network, state: StepState): void {
  for (let b = 0; b < network.bankCount; b += 1) plugIn(network, state, network.deviceCount + b);
}

function plugIn(network: Network, state: StepState, sink: number): void {
  const ports = network.portCount;
  for (let rank = 0; rank < ports; rank += 1) {
    const port = network.portOrder[sink * ports + rank]!;
    const charger = network.portCharger[port]!;
    const powerW = network.wallLinkW[sink * ports + port]!;
    const taken = giveSink(network, state, sink, powerW, state.portHours[port]!, state.chargerWh[charger]!);
    if (taken === 0) continue;
    state.portHours[port]! -= taken / powerW;
    state.chargerWh[charger]! -= taken;
    state.row[account.wall]! += taken;
    if (sink >= network.deviceCount) state.tookCharge[sink - network.deviceCount] = 1;
  }
}

function giveSink(
  network: Network,
  state: StepState,
  sink: number,
  powerW: number,
  hours: number,
  mostWh: number,
): number {
  return sink < network.deviceCount
    ? giveDevice(network, state, sink, powerW, hours, mostWh, true)
    : giveStore(network, state, sink, powerW, hours, mostWh);
}

/**
 * Rule 3: the hub runs loads that have no battery; with the rule "into devices too", each device in turn is plugged into
 * whichever of panel and hub offers more. A device has one socket, so never into both.
 *
 * @returns Wh still on offer, panel and hub together
 */
export function feedDevices(
  network: Network,
  state: StepState,
  panelWh: number,
  hubWh: number,
  hours: number,
): number {
  let hubLeft = hubWh;
  let panelLeft = panelWh;
  for (const d of state.order) {
    const directLoad = network.capacityWh[d] === 0;
    if (!directLoad && !network.feedsDevices) continue;
    if (hubLeft >= panelLeft || !network.feedsDevices) {
      hubLeft -= giveDevice(
        network,
        state,
        d,
        powerOf(network, d, hubLeft, hours),
        hours,
        hubLeft,
        !directLoad,
      );
    } else {
      panelLeft -= giveDevice(
        network,
        state,
        d,
        powerOf(network, d, panelLeft, hours),
        hours,
        panelLeft,
        !directLoad,
      );
    }
  }
  return hubLeft + panelLeft;
}

function powerOf(network: Network, sink: number, offeredWh: number, hours: number): number {
  return Math.min(network.limitW[sink]!, offeredWh / hours);
}

/** A must-have this full no longer holds back others (common practice, no source). */
const nearlyFull = 0.95;

/**
 * Rule 4: banks serve devices in order of need. A nice-to-have is filled once every must-have is nearly full; where the banks
 * can't fill every must-have, only the neediest is filled at a time, so that a fast charger does not win what a slow one
 * needs more.
 *
 * @param topUp true in camp and at stops without a wall: batteries are filled; false on the way and at a wall: only a
 *   device that would run flat is plugged in
 */
export function serveFromBanks(network: Network, state: StepState, topUp: boolean): void {
  const scarce = topUp && banksFallShort(network, state);
  let waiting = false;
  for (const d of state.order) {
    const mustHave = network.mustHave[d] === 1;
    const fill = topUp && !(waiting && (scarce || !mustHave));
    for (let b = 0; b < network.bankCount; b += 1) serve(network, state, b, d, fill);
    waiting ||= mustHave && state.storedWh[d]! < nearlyFull * network.capacityWh[d]!;
  }
}

/** Whether all banks together hold less, at the plug, than the must-haves have room for. */
function banksFallShort(network: Network, state: StepState): boolean {
  let spareWh = 0;
  for (let b = 0; b < network.bankCount; b += 1) {
    spareWh += state.storedWh[network.deviceCount + b]! * network.efficiencyOut[b]!;
  }
  for (let d = 0; d < network.deviceCount; d += 1) {
    if (network.mustHave[d] === 0) continue;
    spareWh -= (network.capacityWh[d]! - state.storedWh[d]!) / network.efficiencyIn[d]!;
  }
  return spareWh < 0;
}

function serve(network: Network, state: StepState, bank: number, device: number, topUp: boolean): void {
  if (state.tookCharge[bank] === 1 && network.chargesWhileServing[bank] === 0) return;
  const sink = network.deviceCount + bank;
  const powerW = network.serveLinkW[bank * network.deviceCount + device]!;
  const efficiency = network.efficiencyOut[bank]!;
  const offered = state.storedWh[sink]! * efficiency;
  const given = giveDevice(network, state, device, powerW, state.outletHours[bank]!, offered, topUp);
  if (given === 0) return;
  state.storedWh[sink] = Math.max(0, state.storedWh[sink]! - given / efficiency);
  state.outletHours[bank]! -= given / powerW;
  state.gaveCharge[bank] = 1;
  state.row[account.lost]! += given / efficiency - given;
}

/** Rule 5: what panel and hub still offer fills the banks, in order; what finds no room is spilled. */
export function fillBuffers(network: Network, state: StepState, offeredWh: number, hours: number): void {
  let left = offeredWh;
  for (let b = 0; b < network.bankCount; b += 1) {
    if (state.gaveCharge[b] === 1 && network.chargesWhileServing[b] === 0) continue;
    const sink = network.deviceCount + b;
    const taken = giveStore(network, state, sink, powerOf(network, sink, left, hours), hours, left);
    if (taken > 0) state.tookCharge[b] = 1;
    left -= taken;
  }
  state.row[account.spilled]! += Math.max(0, left);
}

/** Rule 6: a bank that serves draws for itself, and every bank loses a little with time. */
export function bankLosses(network: Network, state: StepState, hours: number): void {
  for (let b = 0; b < network.bankCount; b += 1) {
    const sink = network.deviceCount + b;
    const stored = state.storedWh[sink]!;
    const standbyWh = state.gaveCharge[b] === 1 ? network.standbyW[b]! * hours : 0;
    const lost = Math.min(stored, standbyWh + stored * network.selfDischargePerHour[b]! * hours);
    state.storedWh[sink] = stored - lost;
    state.row[account.lost]! += lost;
  }
}
