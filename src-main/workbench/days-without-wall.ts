import type { TourCourse } from '../model/flow/course.ts';
import { createState, type StepState } from '../model/flow/step-state.ts';
import { wallNightsBefore } from '../model/flow/wall-nights.ts';
import { walkTour } from '../model/flow/walk-tour.ts';
import { widestGapDays } from '../model/flow/widest-gap.ts';
import { timelineOf } from './assemble/tour.ts';
import type { ComparedTour } from './compared-tour.ts';
import type { ReadyScenario } from './simulate-scenario.ts';
import { withWallEvery } from './walls-every.ts';

/** A course with the scratch of its walks. */
interface Laid {
  readonly course: TourCourse;
  readonly state: StepState;
}

const minutesPerHour = 60;

/**
 * The most days between nights with a wall at which a kit carries the plan; day stops stay as planned. The days of the tour
 * when it needs no wall on the way, 0 when one every night is not enough.
 */
export function daysWithoutWall(
  { network, histories, courseWith }: ReadyScenario,
  { tour, timeline, risk }: ComparedTour,
  onWalk: () => void,
): number {
  const laid = new Map<number, Laid>();
  const lay = (gapDays: number): Laid => {
    const course = courseWith(timelineOf(withWallEvery(tour, gapDays), timeline.stepHours * minutesPerHour));
    const made = { course, state: createState(network, course.steps) };
    laid.set(gapDays, made);
    return made;
  };
  const carries = (history: number, gapDays: number): boolean => {
    const { course, state } = laid.get(gapDays) ?? lay(gapDays);
    walkTour(network, course, histories[history]!, 1, state, null);
    onWalk();
    return state.flatStep < 0;
  };
  return widestGapDays(timeline.days, carries, histories.length, risk.confidence);
}

/** The nights with a wall that a kit needs on a tour to carry its plan; null when one every night is not enough. */
export function nightsNeeded(gapDays: number, days: number): number | null {
  return gapDays === 0 ? null : wallNightsBefore(days, gapDays);
}
