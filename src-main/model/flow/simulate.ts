import type { TourCourse } from './course.ts';
import type { Draws } from './histories/draws.ts';
import { energyMargin, roughMargin, type Carries, type MarginResult } from './margin.ts';
import type { Network } from './network.ts';
import { recordHistories } from './record/record-histories.ts';
import type { TourRecord } from './record/recorder.ts';
import { createState } from './step-state.ts';
import { walkTour } from './walk-tour.ts';

/** What the histories of a tour say about a kit. */
export interface Simulation {
  readonly record: TourRecord;
  readonly margin: MarginResult;
  /** The margin carried in half of the histories, estimated on some of them; never below the margin. */
  readonly usual: MarginResult;
  /** What runs flat just above the margin, over the histories that fail there; null when capped. */
  readonly limit: { readonly device: number; readonly step: number } | null;
}

export interface SimulationOptions {
  /** Share of the histories that the margin is to hold in. */
  readonly confidence: number;
  /** Points of stored energy kept a day: a divisor of the steps of a day. */
  readonly pointsPerDay: number;
  /** Called after each history walked. */
  readonly onWalk: () => void;
}

/** Walks a tour through all its histories at the planned use, then finds the margins. */
export function simulate(
  network: Network,
  course: TourCourse,
  histories: readonly Draws[],
  { confidence, pointsPerDay, onWalk }: SimulationOptions,
): Simulation {
  const record = recordHistories(network, course, histories, pointsPerDay, onWalk);
  const state = createState(network, course.steps);
  const failures = new Map<number, Failure>();
  const carries: Carries = (history, factor) => {
    // The record has walked the plan already.
    if (factor === 1) return record.flatStep[history]! < 0;
    walkTour(network, course, histories[history]!, factor, state, null);
    onWalk();
    if (state.flatStep < 0) return true;
    failures.set(history, { factor, device: state.flatDevice, step: state.flatStep });
    return false;
  };
  const all = Array.from(histories.keys());
  const margin = energyMargin(carries, all, confidence);
  const limit = margin.capped ? null : limitAt(margin.refused, failures, record);
  return { record, margin, usual: usualMargin(carries, all, margin, confidence), limit };
}

/** How a history last failed while the margin was looked for. */
interface Failure {
  readonly factor: number;
  readonly device: number;
  readonly step: number;
}

/** Half of the histories; an estimate says well enough how much of a margin is luck. */
const usualConfidence = 0.5;

function usualMargin(
  carries: Carries,
  histories: readonly number[],
  margin: MarginResult,
  confidence: number,
): MarginResult {
  if (margin.capped || confidence <= usualConfidence) return margin;
  const usual = roughMargin(carries, histories, usualConfidence);
  return usual.value < margin.value ? margin : usual;
}

/** The device that most often runs flat first just above the margin, and the middle of the steps at which it does. */
function limitAt(
  refused: number,
  failures: ReadonlyMap<number, Failure>,
  { flatStep, flatDevice }: TourRecord,
): Simulation['limit'] {
  const stepsOf = new Map<number, number[]>();
  const count = (device: number, step: number): void =>
    void stepsOf.set(device, [...(stepsOf.get(device) ?? []), step]);
  flatStep.forEach((planned, history) => {
    const failure = failures.get(history);
    if (failure !== undefined && failure.factor <= refused) count(failure.device, failure.step);
    else if (refused >= 1 && planned >= 0) count(flatDevice[history]!, planned);
  });
  const [often] = [...stepsOf].sort(([a, one], [b, other]) => other.length - one.length || a - b);
  if (often === undefined) return null;
  const [device, steps] = often;
  return { device, step: middleOf(steps) };
}

/** The middle one; of two middles the earlier. */
export function middleOf(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor((values.length - 1) / 2)]!;
}
