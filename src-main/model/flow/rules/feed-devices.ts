import type { TourCourse } from '../course.ts';
import type { Network } from '../network.ts';
import { fromHub, fromPanel, linkTakenWh, type StepState } from '../step-state.ts';
import { giveDevice, setLink } from './give.ts';

/**
 * Rule 3: the hub runs loads that have no battery; with the rule "into devices too", each device in turn is plugged into
 * whichever of panel and hub offers more. Nice-to-haves wait while the must-haves are short.
 */
export function feedDevices(network: Network, course: TourCourse, state: StepState, waiting: boolean): void {
  const { feedsDevices, mustHave, capacityWh } = network;
  for (let place = 0; place < network.deviceCount; place += 1) {
    const d = state.order[place]!;
    const isLoad = capacityWh[d] === 0;
    if (!isLoad && (!feedsDevices || (waiting && mustHave[d] === 0))) continue;
    feed(network, course, state, d, isLoad ? fromHub : strongerOf(state));
  }
}

/** With the rule "into devices too", what finds no room in the banks is for nice-to-haves that have waited. */
export function feedLeftovers(network: Network, course: TourCourse, state: StepState): void {
  for (let place = 0; place < network.deviceCount; place += 1) {
    const d = state.order[place]!;
    if (network.mustHave[d] === 1 || network.capacityWh[d] === 0) continue;
    feed(network, course, state, d, strongerOf(state));
  }
}

function strongerOf({ offerWh }: StepState): number {
  return offerWh[fromPanel]! > offerWh[fromHub]! ? fromPanel : fromHub;
}

function feed(
  network: Network,
  { stepHours }: TourCourse,
  state: StepState,
  device: number,
  source: number,
): void {
  const offeredWh = state.offerWh[source]!;
  setLink(state, Math.min(network.limitW[device]!, offeredWh / stepHours), stepHours, offeredWh);
  giveDevice(network, state, device, network.capacityWh[device]! > 0);
  const taken = state.link[linkTakenWh]!;
  state.offerWh[source] = offeredWh - taken;
  state.takenWh[source * network.sinkCount + device]! += taken;
}
