import type { TourCourse } from './course.ts';
import type { Draws } from './histories/draws.ts';
import type { Network } from './network.ts';
import { selfDischarge } from './rules/bank-losses.ts';
import { layReserve } from './rules/reserve.ts';
import { startTour, type StepState } from './step-state.ts';
import { walkStep } from './walk-step.ts';

/** Looks on while a tour is walked. */
export interface Onlooker {
  beforeTour(state: StepState): void;
  afterStep(state: StepState, step: number): void;
  afterDay(state: StepState, day: number): void;
}

/**
 * Walks one tour through one history. Without an onlooker the walk ends at the first flat must-have, which `state` names.
 *
 * @param useFactor multiplies all device use; 1 is the plan
 * @param state scratch, made by `createState` for this network
 */
export function walkTour(
  network: Network,
  course: TourCourse,
  draws: Draws,
  useFactor: number,
  state: StepState,
  onlooker: Onlooker | null,
): void {
  const { days, stepsPerDay } = course;
  startTour(network, course, state);
  state.useFactor = useFactor;
  if (network.rations) layReserve(course, state);
  onlooker?.beforeTour(state);
  for (let day = 0; day < days; day += 1) {
    for (let d = 0; d < network.deviceCount; d += 1)
      state.useScale[d] = useFactor * draws.useScale[day * network.deviceCount + d]!;
    for (let step = day * stepsPerDay; step < (day + 1) * stepsPerDay; step += 1) {
      walkStep(network, course, draws, state, step);
      if (onlooker !== null) onlooker.afterStep(state, step);
      else if (state.flatStep >= 0) return;
    }
    selfDischarge(network, state);
    if (onlooker !== null) onlooker.afterDay(state, day);
  }
}
