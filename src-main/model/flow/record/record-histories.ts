import type { TourCourse } from '../course.ts';
import type { Draws } from '../histories/draws.ts';
import type { Network } from '../network.ts';
import { createState } from '../step-state.ts';
import { walkTour } from '../walk-tour.ts';
import { Recorder, type TourRecord } from './recorder.ts';

/**
 * Walks a tour through histories at the planned use and writes down their courses.
 *
 * @param pointsPerDay of stored energy kept: a divisor of the steps of a day
 * @param onWalk called after each history
 */
export function recordHistories(
  network: Network,
  course: TourCourse,
  histories: readonly Draws[],
  pointsPerDay: number,
  onWalk: () => void,
): TourRecord {
  const state = createState(network, course.steps);
  const recorder = new Recorder(network, course, histories.length, pointsPerDay);
  histories.forEach((draws, history) => {
    recorder.follow(history, draws);
    walkTour(network, course, draws, 1, state, recorder);
    onWalk();
  });
  return recorder.record;
}
