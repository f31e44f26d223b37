import { createState } from '../../src-main/model/flow/step-state.ts';
import { walkTour } from '../../src-main/model/flow/walk-tour.ts';
import type { FlowRun } from './random-flow.ts';

/** Whether the one history of a run carries a factor of use. */
export function carriesOf({ network, course, draws }: FlowRun): (factor: number) => boolean {
  const state = createState(network, course.steps);
  return (factor) => {
    walkTour(network, course, draws, factor, state, null);
    return state.flatStep < 0;
  };
}

const largest = 4;
const smallest = 0.0005;

/** The largest factor of use that the one history of a run carries, up to 4. */
export function ownFactor(run: FlowRun): number {
  const carries = carriesOf(run);
  if (carries(largest)) return largest;
  let [carried, refused] = [0, largest];
  while (refused - carried > smallest) {
    const middle = (carried + refused) / 2;
    if (carries(middle)) carried = middle;
    else refused = middle;
  }
  return carried;
}
