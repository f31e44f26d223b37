import type { TourCourse } from './course.ts';
import type { Network } from './network.ts';
import type { StepState, WarmCells } from './step-state.ts';

/** Takes over how warm the cells are from this step on. It changes every few steps, so each warmth is laid out once a course. */
export function warm(network: Network, course: TourCourse, state: StepState, step: number): void {
  if (state.cellsOf !== course) layCells(network, course, state);
  const warmth = course.warmth[step]!;
  const { unreachableWh, charges } = state.cells[warmth]!;
  state.warmth = warmth;
  state.unreachableWh = unreachableWh;
  state.charges = charges;
}

function layCells(network: Network, course: TourCourse, state: StepState): void {
  const rows = course.charges.length / course.warmthPlaces;
  state.cells = Array.from({ length: rows }, (_, warmth) => cellsAt(network, course, warmth));
  state.cellsOf = course;
}

function cellsAt({ capacityWh, ridesWhere }: Network, course: TourCourse, warmth: number): WarmCells {
  const placeOf = (sink: number): number => warmth * course.warmthPlaces + ridesWhere[sink]!;
  return {
    unreachableWh: capacityWh.map((wh, sink) => wh * course.unreachableShare[placeOf(sink)]!),
    charges: Uint8Array.from(capacityWh, (_, sink) => course.charges[placeOf(sink)]!),
  };
}
