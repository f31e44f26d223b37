import type { TourCourse } from '../course.ts';
import type { Network } from '../network.ts';
import { fromHub, fromPanel, linkTakenWh, type StepState } from '../step-state.ts';
import { fillBank, roundingWh, setLink } from './give.ts';

/**
 * Rule 5: what panel and hub still offer fills the banks in order, the stronger of the two first. A bank has one socket,
 * so one of them at a time; what finds no room is spilled.
 */
export function fillBuffers(network: Network, course: TourCourse, state: StepState): void {
  const panelIsStronger = state.offerWh[fromPanel]! > state.offerWh[fromHub]!;
  fillFrom(network, course, state, panelIsStronger ? fromPanel : fromHub);
  fillFrom(network, course, state, panelIsStronger ? fromHub : fromPanel);
}

function fillFrom(network: Network, { stepHours }: TourCourse, state: StepState, source: number): void {
  const { offerWh, storedWh } = state;
  for (let b = 0; b < network.bankCount && offerWh[source]! > roundingWh; b += 1) {
    const sink = network.deviceCount + b;
    if (storedWh[sink]! >= network.fullWh[sink]!) continue;
    const left = offerWh[source]!;
    setLink(state, Math.min(network.limitW[sink]!, left / stepHours), stepHours, left);
    fillBank(network, state, b);
    const taken = state.link[linkTakenWh]!;
    offerWh[source] = left - taken;
    state.takenWh[source * network.sinkCount + sink]! += taken;
  }
}
