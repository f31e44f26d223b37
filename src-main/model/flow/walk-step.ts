import type { TourCourse } from './course.ts';
import type { Draws } from './histories/draws.ts';
import type { Network } from './network.ts';
import { standbyLosses } from './rules/bank-losses.ts';
import {
  chargeBanksAtWall,
  chargeDevicesAtWall,
  feedShortAtWall,
  openPorts,
  plugsDevices,
} from './rules/charge-at-wall.ts';
import { feedDevices, feedLeftovers } from './rules/feed-devices.ts';
import { fillBuffers } from './rules/fill-buffers.ts';
import { orderByNeed } from './rules/order-by-need.ts';
import { serveFromBanks } from './rules/serve-from-banks.ts';
import { surplusWh } from './rules/reserve.ts';
import { useOwnBatteries, wishLow, wishShort } from './rules/use-own-batteries.ts';
import { fromHub, fromPanel, type StepState } from './step-state.ts';
import { warm } from './warm-cells.ts';

/**
 * Applies the rules to one step, each if it has anything to do. What needs no bank comes first; then banks serve, and what
 * time they have left they are filled.
 */
export function walkStep(
  network: Network,
  course: TourCourse,
  draws: Draws,
  state: StepState,
  step: number,
): void {
  if (course.warmth[step] !== state.warmth) warm(network, course, state, step);
  const wants = useOwnBatteries(network, course, state, step);
  const isResting = course.riding[step] === 0;
  const serves = wants === wishShort || (wants === wishLow && isResting);
  const offers = course.hubWh[step]! > 0 || draws.panelW[step]! > 0;
  const isAtWall = course.outlets[step]! > 0 && isFree(course, draws, step);
  const feeds = offers && (network.feedsDevices || network.hasDirectLoads);
  if (serves || offers || isAtWall) {
    openStep(network, course, draws, state, step, isAtWall);
    const sharesOut = serves || feeds || isAtWall;
    const waits = sharesOut && shareOut(network, course, state, step, serves, feeds, isAtWall);
    if (offers) fillBuffers(network, course, state);
    if (waits && feeds) feedLeftovers(network, course, state);
  }
  if (wants === wishShort) settleDeficits(network, state, step);
}

/**
 * Applies the rules that need the devices in order. A function of its own, so that the many steps without them stay short,
 * for the reader and for the machine.
 *
 * @returns whether nice-to-haves wait
 */
function shareOut(
  network: Network,
  course: TourCourse,
  state: StepState,
  step: number,
  serves: boolean,
  feeds: boolean,
  isAtWall: boolean,
): boolean {
  openSockets(network, course, state, step);
  orderByNeed(network, state);
  const waits =
    (isAtWall || (feeds && network.feedsDevices)) && niceToHavesWait(network, course, state, step);
  if (isAtWall) beforeBanksServe(network, course, state, step, waits);
  if (feeds) feedDevices(network, course, state, waits);
  if (serves) {
    serveFromBanks(network, course, state, step, course.riding[step] === 0);
    standbyLosses(network, course, state);
  }
  if (isAtWall) afterBanksServe(network, course, state, step, waits);
  return waits;
}

/** Whether the outlet of a step is there and free in this history. */
function isFree({ luck }: TourCourse, { outletIsFree }: Draws, step: number): boolean {
  const draw = luck[step]!;
  return draw < 0 || outletIsFree[draw] === 1;
}

/** Opens sources for a step, and what the banks take from them. */
function openStep(
  network: Network,
  course: TourCourse,
  draws: Draws,
  state: StepState,
  step: number,
  isAtWall: boolean,
): void {
  const hours = course.stepHours;
  for (let b = 0; b < network.bankCount; b += 1) {
    state.socketHours[network.deviceCount + b] = hours;
    state.turnHours[b] = hours;
  }
  state.offerWh[fromPanel] = draws.panelW[step]! * hours;
  state.offerWh[fromHub] = course.hubWh[step]!;
  state.wallHours[0] = isAtWall ? course.outletHours[step]! : 0;
}

/** Opens the sockets of the devices and the outlets of the banks for a step. */
function openSockets(network: Network, course: TourCourse, state: StepState, step: number): void {
  const hours = course.stepHours;
  for (let d = 0; d < network.deviceCount; d += 1) state.socketHours[d] = hours;
  for (let b = 0; b < network.bankCount; b += 1) state.outletHours[b] = network.outletCount[b]! * hours;
  if (network.hasPluggedDraw) markUse(network, course, state, step);
}

function niceToHavesWait(network: Network, course: TourCourse, state: StepState, step: number): boolean {
  return network.rations && surplusWh(network, course, state, step) < 0;
}

function beforeBanksServe(
  network: Network,
  course: TourCourse,
  state: StepState,
  step: number,
  waits: boolean,
): void {
  openPorts(network, state, course.outlets[step]!);
  const devicesToo = plugsDevices(network, course, step);
  if (network.banksFirst) {
    if (devicesToo) feedShortAtWall(network, state);
    chargeBanksAtWall(network, state);
  }
  if (!devicesToo) return;
  chargeDevicesAtWall(network, state, 1);
  if (!waits) chargeDevicesAtWall(network, state, 0);
}

function afterBanksServe(
  network: Network,
  course: TourCourse,
  state: StepState,
  step: number,
  waits: boolean,
): void {
  if (!network.banksFirst) chargeBanksAtWall(network, state);
  if (waits && plugsDevices(network, course, step)) chargeDevicesAtWall(network, state, 0);
}

function markUse({ deviceCount }: Network, { needWh }: TourCourse, { inUse }: StepState, step: number): void {
  for (let d = 0; d < deviceCount; d += 1) inUse[d] = needWh[step * deviceCount + d]! > 0 ? 1 : 0;
}

/** What is still short now stays unserved. */
function settleDeficits(network: Network, state: StepState, step: number): void {
  for (let d = 0; d < network.deviceCount; d += 1) {
    const deficit = state.deficitWh[d]!;
    if (deficit === 0) continue;
    state.deficitWh[d] = 0;
    state.unservedWh[d]! += deficit;
    if (state.flatStep >= 0 || network.mustHave[d] === 0) continue;
    state.flatStep = step;
    state.flatDevice = d;
  }
}
