import { createState, totalStoredWh, type StepState } from '../../src-main/model/flow/step-state.ts';
import { walkTour, type Onlooker } from '../../src-main/model/flow/walk-tour.ts';
import { benchTour, type BenchTour } from '../support/bench-tour.ts';
import { medianMs } from './measure.ts';
import { withTwin, type Ending } from './run-loop-twin.ts';

const runs = 7;
const nsPerMs = 1e6;
/** The two libraries of mathematics differ in the last digit; what shows above this is no such matter. */
const endingTolerance = 1e-6;

/** With an onlooker a walk goes on past the first flat must-have, so that every run walks the same steps. */
const idle: Onlooker = { beforeTour() {}, afterStep() {}, afterDay() {} };

/**
 * A tour walked through all its histories, ns a step: in TypeScript, in plain C, and the one over the other.
 *
 * @param useFactor multiplies all device use; 1 is the plan
 */
export async function runLoopFigures(useFactor: number): Promise<Readonly<Record<string, number>>> {
  const tour = benchTour();
  const state = createState(tour.network, tour.course.steps);
  const stepsARun = tour.histories.length * tour.course.steps;
  const ms = await medianMs(() => walkAll(tour, useFactor, state), { runs });
  const nsPerStep = (ms * nsPerMs) / stepsARun;
  const ending = walkAll(tour, useFactor, state);
  return withTwin(tour, (twin) => {
    if (twin === null) {
      console.log('No C compiler here: the run loop is not compared with plain C.');
      return { runLoopNsPerStep: nsPerStep };
    }
    const twins = twin.walk(useFactor, runs);
    requireSame(useFactor, ending, twins);
    return {
      runLoopNsPerStep: nsPerStep,
      runLoopNsPerStepC: twins.nsPerStep,
      runLoopRatio: nsPerStep / twins.nsPerStep,
    };
  });
}

function walkAll({ network, course, histories }: BenchTour, useFactor: number, state: StepState): Ending {
  let storedWh = 0;
  let flat = 0;
  for (const draws of histories) {
    walkTour(network, course, draws, useFactor, state, idle);
    storedWh += totalStoredWh(state);
    if (state.flatStep >= 0) flat += 1;
  }
  return { storedWh, flat };
}

/** A check of the bench itself: where the two end apart, their times say nothing about each other. */
function requireSame(useFactor: number, ours: Ending, twins: Ending): void {
  const apartWh = Math.abs(ours.storedWh - twins.storedWh);
  if (ours.flat === twins.flat && apartWh <= endingTolerance * Math.abs(ours.storedWh)) return;
  throw new Error(
    `The run loop and its twin in C end apart: a rule differs, or hangs on rounding. At ${useFactor} times the use ` +
      `TypeScript ends with ${ours.storedWh} Wh and ${ours.flat} flat, C with ${twins.storedWh} Wh and ${twins.flat}.`,
  );
}
