import type { TourCourse } from '../course.ts';
import type { Network } from '../network.ts';
import type { StepState } from '../step-state.ts';

/** Rule 6: a bank draws for itself while it serves. */
export function standbyLosses(network: Network, { stepHours: hours }: TourCourse, state: StepState): void {
  for (let b = 0; b < network.bankCount; b += 1) {
    const busy = network.outletCount[b]! * hours - state.outletHours[b]!;
    if (busy > 0) lose(network, state, b, network.standbyW[b]! * Math.min(hours, busy));
  }
}

/** Every bank loses a little with time; too little for a step, so it is booked by the day. */
export function selfDischarge(network: Network, state: StepState): void {
  for (let b = 0; b < network.bankCount; b += 1)
    lose(network, state, b, state.storedWh[network.deviceCount + b]! * network.selfDischargePerDay[b]!);
}

function lose({ deviceCount }: Network, state: StepState, bank: number, wh: number): void {
  const stored = state.storedWh[deviceCount + bank]!;
  const lost = wh < stored ? wh : stored;
  state.storedWh[deviceCount + bank] = stored - lost;
  state.idleLossWh[bank]! += lost;
}
