import type { Network } from '../network.ts';
import type { StepState } from '../step-state.ts';

/**
 * Puts the devices in order of need: must-haves before nice-to-haves, and among equals the one whose battery would last
 * least long first. So what is scarce goes where it is missed first, and two must-haves run flat together, not one early.
 * An insertion sort in place: a rider has few devices, and their order hardly changes from step to step.
 */
export function orderByNeed(network: Network, state: StepState): void {
  const { order } = state;
  for (let i = 1; i < order.length; i += 1) {
    const device = order[i]!;
    let place = i;
    while (place > 0 && needsSooner(network, state, device, order[place - 1]!)) {
      order[place] = order[place - 1]!;
      place -= 1;
    }
    order[place] = device;
  }
}

function needsSooner(network: Network, state: StepState, a: number, b: number): boolean {
  const { mustHave, typicalUseW } = network;
  if (mustHave[a] !== mustHave[b]) return mustHave[a] === 1;
  // Hours left are stored over use; compared crosswise, so that a device without use needs no division by zero.
  const left = state.storedWh[a]! * typicalUseW[b]! - state.storedWh[b]! * typicalUseW[a]!;
  return left === 0 ? a < b : left < 0;
}
