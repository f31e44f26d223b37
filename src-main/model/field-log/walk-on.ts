import type { TourCourse } from '../flow/course.ts';
import type { Draws } from '../flow/histories/draws.ts';
import type { Network } from '../flow/network.ts';
import { selfDischarge } from '../flow/rules/bank-losses.ts';
import { layReserve } from '../flow/rules/reserve.ts';
import { startTour, type StepState } from '../flow/step-state.ts';
import { walkStep } from '../flow/walk-step.ts';

/** Where a walk begins that does not begin at home with everything full. */
export interface MidTour {
  readonly step: number;
  /** By sink, Wh. */
  readonly storedWh: Float64Array;
}

/**
 * Walks the rest of a tour through one history from what is stored now, by the same rules as a whole tour, until the first
 * must-have is flat.
 *
 * @param off a device that is switched off, or -1
 * @param state scratch, made by `createState` for this network; names the flat device, if any
 * @returns steps walked before it, or all that were left
 */
export function walkOn(
  network: Network,
  course: TourCourse,
  draws: Draws,
  from: MidTour,
  off: number,
  state: StepState,
): number {
  const { stepsPerDay } = course;
  startTour(network, course, state);
  state.storedWh.set(from.storedWh);
  state.useFactor = 1;
  if (network.rations) layReserve(course, state);
  for (let step = from.step; step < course.steps; step += 1) {
    const day = Math.floor(step / stepsPerDay);
    if (step === from.step || step % stepsPerDay === 0) setUse(network, draws, day, off, state);
    walkStep(network, course, draws, state, step);
    if (state.flatStep >= 0) return step - from.step;
    if ((step + 1) % stepsPerDay === 0) selfDischarge(network, state);
  }
  return course.steps - from.step;
}

function setUse({ deviceCount }: Network, draws: Draws, day: number, off: number, state: StepState): void {
  for (let d = 0; d < deviceCount; d += 1)
    state.useScale[d] = d === off ? 0 : draws.useScale[day * deviceCount + d]!;
}
