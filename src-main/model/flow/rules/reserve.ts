import type { TourCourse } from '../course.ts';
import type { Network } from '../network.ts';
import type { StepState } from '../step-state.ts';

/*
 * Rationing: nice-to-haves wait while less is stored than the must-haves need until the next expected wall. Sun and wheel are
 * not counted on; what they bring beyond full banks is the nice-to-haves' at once.
 */

/** Days stray from the plan, so the must-haves' share is held this much larger (common practice, no source: a quarter more). */
const prudence = 1.25;

/**
 * Lays out what must be stored after each step so that the must-haves get to the next wall, Wh at their batteries: what the
 * next step lacks, and what is still lacking after it. A night at a wall that fills the stores needs nothing in reserve
 * before it; a weak wall counts for what it gives.
 */
export function layReserve({ steps, mustHaveNeedWh, wallIncomeWh }: TourCourse, state: StepState): void {
  const { reserveWh, useFactor } = state;
  if (state.reserveFactor === useFactor) return;
  state.reserveFactor = useFactor;
  let reserve = 0;
  for (let step = steps - 1; step >= 0; step -= 1) {
    reserveWh[step] = reserve;
    const lacking = reserve + mustHaveNeedWh[step]! * useFactor * prudence - wallIncomeWh[step]!;
    reserve = lacking > 0 ? lacking : 0;
  }
}

/**
 * What is stored beyond what the must-haves need, Wh at their batteries; below 0 they are short. All stores together must
 * hold the reserve; and the banks what each must-have lacks until the next wall, for none can have what another holds.
 */
export function surplusWh(network: Network, course: TourCourse, state: StepState, step: number): number {
  const { deviceCount, bankCount, mustHave, bankToMustHave } = network;
  const needFactor = state.useFactor * prudence;
  let banked = 0;
  for (let b = 0; b < bankCount; b += 1) banked += usableWh(state, deviceCount + b) * bankToMustHave;
  let together = banked - state.reserveWh[step]!;
  let apart = banked;
  for (let d = 0; d < deviceCount; d += 1) {
    if (mustHave[d] === 0) continue;
    const held = usableWh(state, d);
    const lacking = course.needToWallWh[step * deviceCount + d]! * needFactor - held;
    together += held;
    if (lacking > 0) apart -= lacking;
  }
  return together < apart ? together : apart;
}

/** What the coldest step of the tour leaves in reach, Wh. */
function usableWh({ storedWh, mostUnreachableWh }: StepState, sink: number): number {
  const usable = storedWh[sink]! - mostUnreachableWh[sink]!;
  return usable > 0 ? usable : 0;
}

/** Banks this full together have no room that counts (common practice, no source). */
const brimShare = 0.95;

/** What nice-to-haves may take from the banks, Wh at the plug: the surplus, or what stands at the brim of full banks. */
export function spareWh(network: Network, course: TourCourse, state: StepState, step: number): number {
  const { deviceCount, bankCount, capacityWh, efficiencyOut } = network;
  let brimWh = 0;
  for (let b = 0; b < bankCount; b += 1) {
    const overWh = state.storedWh[deviceCount + b]! - capacityWh[deviceCount + b]! * brimShare;
    brimWh += overWh * efficiencyOut[b]!;
  }
  return Math.max(brimWh, surplusWh(network, course, state, step));
}
