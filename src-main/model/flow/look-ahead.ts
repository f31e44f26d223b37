import type { TourCourse } from './course.ts';
import type { Draws } from './histories/draws.ts';
import { energyMargin, type MarginResult } from './margin.ts';
import type { Network } from './network.ts';
import { createState } from './step-state.ts';
import { walkTour } from './walk-tour.ts';

/** What the histories of a tour say about a kit, in short. */
export interface LookAhead {
  readonly margin: MarginResult;
  /** Histories in which a must-have runs flat at the planned use. */
  readonly flat: number;
}

/** Finds the energy margin of a kit and how often it fails the plan, and keeps no record of the walks. */
export function lookAhead(
  network: Network,
  course: TourCourse,
  histories: readonly Draws[],
  confidence: number,
  onWalk: () => void,
): LookAhead {
  const state = createState(network, course.steps);
  let flat = 0;
  const planned = new Map<number, boolean>();
  const walk = (history: number, factor: number): boolean => {
    walkTour(network, course, histories[history]!, factor, state, null);
    onWalk();
    return state.flatStep < 0;
  };
  const carries = (history: number, factor: number): boolean => {
    if (factor !== 1) return walk(history, factor);
    const known = planned.get(history);
    if (known !== undefined) return known;
    const carried = walk(history, factor);
    planned.set(history, carried);
    if (!carried) flat += 1;
    return carried;
  };
  // The plan is asked of every history first, so that `flat` has seen them all.
  const margin = energyMargin(carries, Array.from(histories.keys()), confidence);
  return { margin, flat };
}
