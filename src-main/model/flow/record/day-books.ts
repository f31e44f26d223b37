import type { TourCourse } from '../course.ts';
import type { Network } from '../network.ts';
import { clearSums, from, totalStoredWh, type StepState } from '../step-state.ts';
import { dayAccounts, deviceAccounts, indexOf } from './accounts.ts';
import { BankOrigins, originOf } from './bank-origins.ts';

const inDay = indexOf(dayAccounts);
const inDevice = indexOf(deviceAccounts);

/** The books of all days, summed over the histories walked so far. */
export class DayBooks {
  /** By day and account, Wh. */
  readonly days: Float64Array;
  /** By day, device and account, Wh. */
  readonly devices: Float64Array;
  readonly #network: Network;
  readonly #plannedWh: Float64Array;
  readonly #hubWh: Float64Array;
  readonly #origins: BankOrigins;
  #storedWh = 0;

  constructor(network: Network, course: TourCourse) {
    this.#network = network;
    this.#plannedWh = sumsByDay(course.needWh, course.days, network.deviceCount);
    this.#hubWh = sumsByDay(course.hubWh, course.days, 1);
    this.#origins = new BankOrigins(network);
    this.days = new Float64Array(course.days * dayAccounts.length);
    this.devices = new Float64Array(course.days * network.deviceCount * deviceAccounts.length);
  }

  /** At the start of a tour. */
  open(state: StepState): void {
    clearSums(state);
    this.#origins.reset(state);
    this.#storedWh = totalStoredWh(state);
  }

  /**
   * Books the day that ends.
   *
   * @param panelWh what the panels had to give on it
   */
  book(state: StepState, day: number, panelWh: number): void {
    this.#origins.mix(state);
    this.#bookDevices(state, day);
    this.#bookDay(state, day, panelWh);
    this.#origins.keep(state);
    clearSums(state);
  }

  #bookDevices({ takenWh, servedWh, unservedWh, useScale }: StepState, day: number): void {
    const { deviceCount, bankCount, sinkCount } = this.#network;
    for (let d = 0; d < deviceCount; d += 1) {
      const at = (day * deviceCount + d) * deviceAccounts.length;
      const add = (account: number, wh: number): void => void (this.devices[at + account]! += wh);
      add(inDevice.demand, this.#plannedWh[day * deviceCount + d]! * useScale[d]!);
      add(inDevice.unserved, unservedWh[d]!);
      add(inDevice.wallDirect, takenWh[from.wall * sinkCount + d]!);
      add(inDevice.panel, takenWh[from.panel * sinkCount + d]!);
      add(inDevice.hub, takenWh[from.hub * sinkCount + d]!);
      for (let b = 0; b < bankCount; b += 1) {
        const served = servedWh[b * deviceCount + d]!;
        add(inDevice.wallThroughBank, served * this.#origins.share(b, originOf.wall));
        add(inDevice.panel, served * this.#origins.share(b, originOf.panel));
        add(inDevice.hub, served * this.#origins.share(b, originOf.hub));
        add(inDevice.start, served * this.#origins.share(b, originOf.start));
      }
    }
  }

  #bookDay(state: StepState, day: number, panelWh: number): void {
    const { deviceCount, sinkCount } = this.#network;
    const at = day * dayAccounts.length;
    const add = (account: number, wh: number): void => void (this.days[at + account]! += wh);
    const taken = (source: number, firstSink: number, endSink: number): number =>
      sumOf(state.takenWh, source * sinkCount + firstSink, source * sinkCount + endSink);
    const hubWh = this.#hubWh[day]!;
    for (let d = 0; d < deviceCount; d += 1)
      add(inDay.demand, this.#plannedWh[day * deviceCount + d]! * state.useScale[d]!);
    add(inDay.unserved, sumOf(state.unservedWh, 0, deviceCount));
    add(inDay.wallDirect, taken(from.wall, 0, deviceCount));
    add(inDay.wallToBanks, taken(from.wall, deviceCount, sinkCount));
    add(inDay.panel, panelWh);
    add(inDay.hub, hubWh);
    add(inDay.spilled, panelWh + hubWh - taken(from.panel, 0, sinkCount) - taken(from.hub, 0, sinkCount));
    add(inDay.lost, this.#lostWh(state));
    const storedWh = totalStoredWh(state);
    add(inDay.stored, storedWh - this.#storedWh);
    this.#storedWh = storedWh;
  }

  /** What turned to heat: reckoned from the efficiencies, not as what is missing, so that the books can be checked. */
  #lostWh({ takenWh, servedWh, idleLossWh, pluggedWh }: StepState): number {
    const { deviceCount, bankCount, sinkCount, efficiencyIn, efficiencyOut } = this.#network;
    let lost = sumOf(idleLossWh, 0, bankCount);
    for (let sink = 0; sink < sinkCount; sink += 1) {
      let atPlug = 0;
      for (let at = sink; at < takenWh.length; at += sinkCount) atPlug += takenWh[at]!;
      const isDevice = sink < deviceCount;
      if (isDevice) for (let b = 0; b < bankCount; b += 1) atPlug += servedWh[b * deviceCount + sink]!;
      const extra = isDevice ? pluggedWh[sink]! : 0;
      lost += extra + (atPlug - extra) * (1 - efficiencyIn[sink]!);
    }
    for (let b = 0; b < bankCount; b += 1)
      lost += sumOf(servedWh, b * deviceCount, (b + 1) * deviceCount) * (1 / efficiencyOut[b]! - 1);
    return lost;
  }
}

function sumOf(values: Float64Array, begin: number, end: number): number {
  let sum = 0;
  for (let at = begin; at < end; at += 1) sum += values[at]!;
  return sum;
}

/** Sums over the steps of each day; entry `day * kinds + kind`. */
function sumsByDay(values: Float64Array, days: number, kinds: number): Float64Array {
  const sums = new Float64Array(days * kinds);
  const perDay = values.length / days;
  values.forEach((value, at) => (sums[Math.floor(at / perDay) * kinds + (at % kinds)]! += value));
  return sums;
}
