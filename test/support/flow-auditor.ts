import { clearSums, sources, type StepState } from '../../src-main/model/flow/step-state.ts';
import type { Onlooker } from '../../src-main/model/flow/walk-tour.ts';
import type { FlowRun } from './random-flow.ts';

/** The worst of each check over all steps of a walk; NaN stays NaN. */
class Worst {
  /** Change of a store beside what came in, less the losses, less what went out, Wh. */
  imbalanceWh = 0;
  /** Beyond empty or full, taken beyond what was there, or below nothing, Wh. */
  beyondWh = 0;

  differs(got: number, expected: number): void {
    this.imbalanceWh = Math.max(this.imbalanceWh, Math.abs(got - expected));
  }

  exceeds(value: number, least: number, most: number): void {
    this.beyondWh = Math.max(this.beyondWh, least - value, value - most);
  }
}

/**
 * Checks in every step of a walk that each store changes by what came in, less the losses, less what went out, stays between empty
 * and full, and that no more is taken than is offered.
 */
export class FlowAuditor implements Onlooker {
  readonly worst = new Worst();
  readonly #run: FlowRun;
  #before = new Float64Array(0);

  constructor(run: FlowRun) {
    this.#run = run;
  }

  beforeTour(state: StepState): void {
    clearSums(state);
    this.#before = state.storedWh.slice();
  }

  afterStep(state: StepState, step: number): void {
    const { deviceCount, bankCount } = this.#run.network;
    for (let d = 0; d < deviceCount; d += 1) this.#audit(state, d, this.#deviceGainWh(state, d, step));
    for (let b = 0; b < bankCount; b += 1) this.#audit(state, deviceCount + b, this.#bankGainWh(state, b));
    this.#auditFlows(state, step);
    this.beforeTour(state);
  }

  /** Between the last step of a day and its end a bank only loses by itself. */
  afterDay(state: StepState): void {
    const { deviceCount, bankCount } = this.#run.network;
    for (let b = 0; b < bankCount; b += 1) this.#audit(state, deviceCount + b, -state.idleLossWh[b]!);
    this.beforeTour(state);
  }

  #deviceGainWh(state: StepState, d: number, step: number): number {
    const { deviceCount, bankCount, sinkCount, efficiencyIn } = this.#run.network;
    let atPlugWh = -state.pluggedWh[d]!;
    for (let source = 0; source < sources.length; source += 1)
      atPlugWh += state.takenWh[source * sinkCount + d]!;
    for (let b = 0; b < bankCount; b += 1) atPlugWh += state.servedWh[b * deviceCount + d]!;
    const needWh = this.#run.course.needWh[step * deviceCount + d]! * state.useScale[d]!;
    return atPlugWh * efficiencyIn[d]! - (needWh - state.unservedWh[d]!);
  }

  #bankGainWh({ servedWh, idleLossWh, takenWh }: StepState, b: number): number {
    const { deviceCount, sinkCount, efficiencyIn, efficiencyOut } = this.#run.network;
    let gainWh = -idleLossWh[b]!;
    for (let source = 0; source < sources.length; source += 1)
      gainWh += takenWh[source * sinkCount + deviceCount + b]! * efficiencyIn[deviceCount + b]!;
    for (let d = 0; d < deviceCount; d += 1) gainWh -= servedWh[b * deviceCount + d]! / efficiencyOut[b]!;
    return gainWh;
  }

  #audit({ storedWh }: StepState, sink: number, gainWh: number): void {
    this.worst.differs(storedWh[sink]! - this.#before[sink]!, gainWh);
    this.worst.exceeds(storedWh[sink]!, 0, this.#run.network.capacityWh[sink]!);
  }

  #auditFlows(state: StepState, step: number): void {
    const { network, course, draws } = this.#run;
    const chargersW = network.chargerTotalW.reduce((sum, watts) => sum + watts, 0);
    const offersWh = [
      chargersW * course.outletHours[step]!,
      draws.panelW[step]! * course.stepHours,
      course.hubWh[step]!,
    ];
    offersWh.forEach((offerWh, source) => {
      const ofSource = state.takenWh.subarray(source * network.sinkCount, (source + 1) * network.sinkCount);
      this.worst.exceeds(
        ofSource.reduce((sum, wh) => sum + wh, 0),
        0,
        offerWh,
      );
    });
    for (const sums of [state.takenWh, state.servedWh, state.idleLossWh, state.pluggedWh, state.unservedWh])
      for (const wh of sums) this.worst.exceeds(wh, 0, Infinity);
  }
}
