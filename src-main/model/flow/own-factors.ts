import type { TourCourse } from './course.ts';
import type { Draws } from './histories/draws.ts';
import { largestUseFactor } from './margin.ts';
import type { Network } from './network.ts';
import { createState } from './step-state.ts';
import { walkTour } from './walk-tour.ts';

/** As close as the energy margin is found, so that the two read alike. */
const ownFactorTolerance = 0.0025;
/** The factor that the plan's verdict hangs on; it is tried itself, so that rounding never turns a plan that is carried. */
const plannedUse = 1;

/**
 * Each history's own largest factor of use at which no must-have runs flat, by history: 0 when none is carried, and
 * `largestUseFactor` when that is. Found from below to a quarter of a per cent of planned use, and at least 1 exactly where the
 * plan is carried.
 *
 * Unlike the energy margin, which asks only which factor enough histories carry, this tells what each of them carries, so that
 * two kits can be compared history by history.
 *
 * @param onWalk told of every walk
 */
export function ownFactors(
  network: Network,
  course: TourCourse,
  histories: readonly Draws[],
  onWalk: () => void,
): Float64Array {
  const state = createState(network, course.steps);
  return Float64Array.from(histories, (draws) =>
    largestCarried((factor) => {
      walkTour(network, course, draws, factor, state, null);
      onWalk();
      return state.flatStep < 0;
    }),
  );
}

/**
 * The same factors are tried in every history and with every kit: the rules serve in order of need, so that a larger factor may
 * now and then be carried where a smaller is not, and a search from elsewhere could end at another of them.
 */
function largestCarried(carries: (factor: number) => boolean): number {
  let [carried, refused] = [0, plannedUse];
  if (carries(plannedUse)) {
    if (carries(largestUseFactor)) return largestUseFactor;
    [carried, refused] = [plannedUse, largestUseFactor];
  }
  while (refused - carried > ownFactorTolerance) {
    const middle = (carried + refused) / 2;
    if (carries(middle)) carried = middle;
    else refused = middle;
  }
  return carried;
}
