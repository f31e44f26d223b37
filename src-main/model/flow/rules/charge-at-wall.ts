import type { TourCourse } from '../course.ts';
import type { Network } from '../network.ts';
import { fromWall, linkTakenWh, type StepState } from '../step-state.ts';
import { fillBank, giveDevice, setLink } from './give.ts';

/*
 * Rule 2, at a wall: devices take ports in order of need, then banks; or banks first, if the rider says so. While the
 * must-haves are short, nice-to-haves come after the banks. At a campsite post the rider may leave banks only.
 *
 * A charger is plugged in while there is an outlet for it; its ports share its total power. A port that a filling sink
 * leaves free goes to the next one within the step.
 */

/** Plugs the chargers in, as far as there are outlets, for the wall hours of the step. */
export function openPorts(network: Network, state: StepState, outlets: number): void {
  const hours = state.wallHours[0]!;
  for (let p = 0; p < network.portCount; p += 1) state.portHours[p] = hours;
  for (let c = 0; c < state.chargerWh.length; c += 1) {
    state.chargerWh[c] = c < outlets ? network.chargerTotalW[c]! * hours : 0;
  }
}

/** Whether devices are plugged in where the rider is: at a post they may stay in the tent. */
export function plugsDevices(network: Network, course: TourCourse, step: number): boolean {
  return !(network.banksOnlyAtPost && course.atPost[step] === 1);
}

/** Feeds what is short and no more: nobody lets a device run flat beside a wall. */
export function feedShortAtWall(network: Network, state: StepState): void {
  for (let place = 0; place < network.deviceCount; place += 1) {
    const d = state.order[place]!;
    if (state.deficitWh[d]! > 0) plugIn(network, state, d, false);
  }
}

/** Charges devices in order of need. */
export function chargeDevicesAtWall(network: Network, state: StepState, mustHave: 0 | 1): void {
  for (let place = 0; place < network.deviceCount; place += 1) {
    const d = state.order[place]!;
    if (network.mustHave[d] !== mustHave) continue;
    const topUp = state.storedWh[d]! < network.fullWh[d]!;
    if (topUp || state.deficitWh[d]! > 0) plugIn(network, state, d, topUp);
  }
}

/** Charges banks in order. */
export function chargeBanksAtWall(network: Network, state: StepState): void {
  const { deviceCount } = network;
  for (let b = 0; b < network.bankCount; b += 1) {
    const sink = deviceCount + b;
    if (state.storedWh[sink]! < network.fullWh[sink]!) plugIn(network, state, sink, true);
  }
}

/** Plugs a sink into port after port, one at a time, until its time at the wall or its socket is used up. */
function plugIn(network: Network, state: StepState, sink: number, topUp: boolean): void {
  const { portCount, deviceCount } = network;
  const { socketHours, portHours } = state;
  let hours = state.wallHours[0]!;
  for (let rank = 0; rank < portCount && hours > 0 && socketHours[sink]! > 0; rank += 1) {
    const port = network.portOrder[sink * portCount + rank]!;
    if (portHours[port]! <= 0) continue;
    const powerW = network.wallLinkW[sink * portCount + port]!;
    const socketBefore = socketHours[sink]!;
    const mostWh = state.chargerWh[network.portCharger[port]!]!;
    setLink(state, powerW, Math.min(hours, portHours[port]!), mostWh);
    if (sink < deviceCount) giveDevice(network, state, sink, topUp);
    else fillBank(network, state, sink - deviceCount);
    book(network, state, sink, port);
    // A sink can't be at two ports at once: what it took of its socket says how long it was at this one.
    hours -= ((socketBefore - socketHours[sink]!) * network.limitW[sink]!) / powerW;
  }
}

/** What was taken leaves the port, and its charger, that much less. */
function book(network: Network, state: StepState, sink: number, port: number): void {
  const taken = state.link[linkTakenWh]!;
  if (taken === 0) return;
  const { portHours, chargerWh } = state;
  const charger = network.portCharger[port]!;
  const powerW = network.wallLinkW[sink * network.portCount + port]!;
  portHours[port] = Math.max(0, portHours[port]! - taken / powerW);
  chargerWh[charger] = Math.max(0, chargerWh[charger]! - taken);
  state.takenWh[fromWall * network.sinkCount + sink]! += taken;
}
