import type { TourCourse } from '../course.ts';
import type { Network } from '../network.ts';
import type { StepState } from '../step-state.ts';

/*
 * What the devices want after a step of use: nothing, to be filled because one is low, or to be fed because one is short.
 * Plain constants for the run loop, like the indices in `step-state.ts`.
 */
export const wishNone = 0;
export const wishLow = 1;
export const wishShort = 2;
export const wish = { none: wishNone, low: wishLow, short: wishShort } as const;
export type Wish = (typeof wish)[keyof typeof wish];

/**
 * Rule 1: every device runs on its own battery, as far as the cold lets it; what is left over is its deficit of this step.
 *
 * @returns the most urgent wish of any device
 */
export function useOwnBatteries(
  { deviceCount, lowWh }: Network,
  { needWh }: TourCourse,
  state: StepState,
  step: number,
): Wish {
  const { storedWh, unreachableWh, useScale } = state;
  const at = step * deviceCount;
  let wants: Wish = wishNone;
  for (let d = 0; d < deviceCount; d += 1) {
    const need = needWh[at + d]! * useScale[d]!;
    const left = storedWh[d]! - need;
    if (left >= unreachableWh[d]!) {
      storedWh[d] = left;
      if (left < lowWh[d]! && wants === wishNone) wants = wishLow;
    } else {
      wants = runShort(state, d, need) ? wishShort : wants;
    }
  }
  return wants;
}

/** Takes what is in reach of a battery that does not hold a step's need; false where nothing is needed. */
function runShort(
  { storedWh, deficitWh, unreachableWh }: StepState,
  device: number,
  needWh: number,
): boolean {
  if (needWh === 0) return false;
  const stored = storedWh[device]!;
  const usable = Math.max(0, stored - unreachableWh[device]!);
  storedWh[device] = stored - usable;
  deficitWh[device] = needWh - usable;
  return true;
}
