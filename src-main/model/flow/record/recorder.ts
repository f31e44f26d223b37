import type { TourCourse } from '../course.ts';
import type { Draws } from '../histories/draws.ts';
import type { Network } from '../network.ts';
import { totalStoredWh, type StepState } from '../step-state.ts';
import type { Onlooker } from '../walk-tour.ts';
import { DayBooks } from './day-books.ts';

/** What the walks of all histories leave behind. */
export interface TourRecord {
  readonly histories: number;
  /** Sums over the histories, Wh: by day and account, and by day, device and account. */
  readonly days: Float64Array;
  readonly devices: Float64Array;
  /** All energy stored, Wh: entry `point * histories + history`, at the end of each point. */
  readonly storedWh: Float32Array;
  readonly pointsPerDay: number;
  /** By history: the least energy stored after any step, Wh. */
  readonly lowestWh: Float64Array;
  /** By history: the first flat must-have, step and device; -1 where none is. */
  readonly flatStep: Int32Array;
  readonly flatDevice: Int32Array;
  /** 1 where a must-have was flat in some step of the day: entry `day * histories + history`. */
  readonly flatOnDay: Uint8Array;
}

/** Looks on while each history in turn is walked, and writes down its course. */
export class Recorder implements Onlooker {
  readonly record: TourRecord;
  readonly #network: Network;
  readonly #books: DayBooks;
  readonly #stepsPerDay: number;
  readonly #stepsPerPoint: number;
  readonly #stepHours: number;
  #history = 0;
  #panelW: Float32Array = new Float32Array(0);

  /** @param pointsPerDay of stored energy kept: a divisor of the steps of a day */
  constructor(network: Network, course: TourCourse, histories: number, pointsPerDay: number) {
    this.#network = network;
    this.#books = new DayBooks(network, course);
    this.#stepsPerDay = course.stepsPerDay;
    this.#stepsPerPoint = course.stepsPerDay / pointsPerDay;
    this.#stepHours = course.stepHours;
    this.record = {
      histories,
      days: this.#books.days,
      devices: this.#books.devices,
      storedWh: new Float32Array(course.days * pointsPerDay * histories),
      pointsPerDay,
      lowestWh: new Float64Array(histories).fill(Infinity),
      flatStep: new Int32Array(histories).fill(-1),
      flatDevice: new Int32Array(histories).fill(-1),
      flatOnDay: new Uint8Array(course.days * histories),
    };
  }

  /** Says whose walk comes next. */
  follow(history: number, { panelW }: Draws): void {
    this.#history = history;
    this.#panelW = panelW;
  }

  beforeTour(state: StepState): void {
    this.#books.open(state);
  }

  afterStep(state: StepState, step: number): void {
    const { storedWh, lowestWh, histories } = this.record;
    const now = totalStoredWh(state);
    if (now < lowestWh[this.#history]!) lowestWh[this.#history] = now;
    const point = (step + 1) / this.#stepsPerPoint;
    if (Number.isInteger(point)) storedWh[(point - 1) * histories + this.#history] = now;
  }

  afterDay(state: StepState, day: number): void {
    // Before the books are closed: that clears the day's sums.
    if (leavesMustHaveFlat(this.#network, state))
      this.record.flatOnDay[day * this.record.histories + this.#history] = 1;
    let panelW = 0;
    const first = day * this.#stepsPerDay;
    for (let step = first; step < first + this.#stepsPerDay; step += 1) panelW += this.#panelW[step]!;
    this.#books.book(state, day, panelW * this.#stepHours);
    this.record.flatStep[this.#history] = state.flatStep;
    this.record.flatDevice[this.#history] = state.flatDevice;
  }
}

/** What a step leaves short, however little, is flat: as `settleDeficits` has it for the first time, here for the sums of a day. */
function leavesMustHaveFlat({ deviceCount, mustHave }: Network, { unservedWh }: StepState): boolean {
  for (let d = 0; d < deviceCount; d += 1) if (mustHave[d] === 1 && unservedWh[d] !== 0) return true;
  return false;
}
