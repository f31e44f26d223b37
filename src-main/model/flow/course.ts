import type { Rules } from '../../../shared-types/scenario.ts';
import { cellDegC, rides } from '../storage/cell-warmth.ts';
import { mayCharge } from '../storage/charging-temperature.ts';
import { usableShare } from '../storage/cold.ts';
import { activities } from '../storage/device.ts';
import { activityIndex } from './day-schedule.ts';
import type { Network } from './network.ts';
import { plannedUseWh } from './planned-use.ts';
import { whereabouts, type Timeline } from './timeline.ts';

/**
 * What is the same in every history of a tour with one kit, laid out for the run loop. Arrays have one entry a step, unless
 * they say otherwise.
 */
export interface TourCourse {
  readonly stepHours: number;
  readonly stepsPerDay: number;
  readonly days: number;
  readonly steps: number;
  readonly riding: Uint8Array;
  /** 1 in camp at a campsite post. */
  readonly atPost: Uint8Array;
  readonly outlets: Uint8Array;
  readonly outletHours: Float64Array;
  readonly luck: Int32Array;
  /** By step and device: planned use, Wh. */
  readonly needWh: Float64Array;
  /** What the hub gives at its plug, Wh. */
  readonly hubWh: Float64Array;
  /** How warm the cells are: a row of the two tables below. */
  readonly warmth: Uint16Array;
  /** Entries of a row: one for each of `rides`. */
  readonly warmthPlaces: number;
  readonly unreachableShare: Float64Array;
  readonly charges: Uint8Array;
  /** By place: the unreachable share in the coldest step of the tour. */
  readonly mostUnreachableShare: Float64Array;
  /** Planned use of the must-haves together, Wh. */
  readonly mustHaveNeedWh: Float64Array;
  /** By step and device: what a must-have needs from after the step until the next certain wall, Wh; 0 for nice-to-haves. */
  readonly needToWallWh: Float64Array;
  /** What walls that are certain put into the must-haves' batteries, straight or through a bank, Wh. */
  readonly wallIncomeWh: Float64Array;
}

/** What a course is laid out from, besides the kit and the timeline. */
export interface CourseAround {
  /** By day: mean power of the hub at its plug while riding, W. */
  readonly hubPlugW: readonly number[];
  /** By step. */
  readonly airDegC: ArrayLike<number>;
  readonly cellsSleep: Rules['cellsSleep'];
}

const post = whereabouts.indexOf('electric-post');

/** Lays out the course of a tour with a kit. */
export function layCourse(network: Network, timeline: Timeline, around: CourseAround): TourCourse {
  return withKit(layTour(network, timeline, around), network, timeline, around.hubPlugW);
}

/** The part of a course that hangs on the devices, the rules, and whether there is a charger at all. */
export type LaidTour = Omit<TourCourse, 'hubWh' | 'wallIncomeWh'>;

/** Lays out what all kits with the same devices and rules share, those without a charger apart. */
export function layTour(
  network: Network,
  timeline: Timeline,
  around: Pick<CourseAround, 'airDegC' | 'cellsSleep'>,
): LaidTour {
  const { stepHours, stepsPerDay, days, steps, riding, outlets, outletHours, luck } = timeline;
  const needWh = plannedUseWh(network.devices, timeline);
  return {
    ...{ stepHours, stepsPerDay, days, steps, riding, outlets, outletHours, luck, needWh },
    atPost: Uint8Array.from(timeline.where, (where) => (where === post ? 1 : 0)),
    ...layWarmth(timeline, around),
    mustHaveNeedWh: Float64Array.from({ length: steps }, (_, step) => mustHaveUseWh(network, needWh, step)),
    needToWallWh: needToWallWh(network, timeline, needWh),
  };
}

/** Adds what hangs on hub, chargers and banks. */
export function withKit(
  laid: LaidTour,
  network: Network,
  timeline: Timeline,
  hubPlugW: readonly number[],
): TourCourse {
  return { ...laid, hubWh: hubByStepWh(timeline, hubPlugW), wallIncomeWh: wallIncomeWh(network, timeline) };
}

function hubByStepWh(timeline: Timeline, hubPlugW: readonly number[]): Float64Array {
  const kinds = activities.length;
  return Float64Array.from({ length: timeline.steps }, (_, step) => {
    const ridingShare = timeline.activityShare[step * kinds + activityIndex('riding')]!;
    return hubPlugW[Math.floor(step / timeline.stepsPerDay)]! * ridingShare * timeline.stepHours;
  });
}

function mustHaveUseWh({ deviceCount, mustHave }: Network, needWh: Float64Array, step: number): number {
  let sum = 0;
  for (let d = 0; d < deviceCount; d += 1) sum += mustHave[d]! * needWh[step * deviceCount + d]!;
  return sum;
}

/** Sums the planned use of each must-have up to the next certain wall; during one, up to the wall after it. */
function needToWallWh(network: Network, timeline: Timeline, needWh: Float64Array): Float64Array {
  const { deviceCount, mustHave } = network;
  const { steps } = timeline;
  const isWall = (step: number): boolean => isCertainWall(network, timeline, step);
  const sums = new Float64Array(steps * deviceCount);
  for (let d = 0; d < deviceCount; d += 1) {
    if (mustHave[d] === 0) continue;
    // Going backwards: what lies between the start of a step and the next wall; within a wall, what lies beyond it.
    let beyond = 0;
    for (let step = steps - 1; step >= 0; step -= 1) {
      const wallFollows = step + 1 < steps && isWall(step + 1);
      const at = step * deviceCount + d;
      sums[at] = wallFollows && !isWall(step) ? 0 : beyond;
      if (!isWall(step)) beyond = sums[at] + needWh[at]!;
    }
  }
  return sums;
}

/** A wall that must-haves can be filled at for certain: not a day stop, nor a post at which they stay in the tent. */
function isCertainWall(network: Network, { outlets, luck, where }: Timeline, step: number): boolean {
  const inTent = network.banksOnlyAtPost && where[step] === post;
  return network.portCount > 0 && outlets[step]! > 0 && luck[step]! < 0 && !inTent;
}

/** What each step at a certain wall brings, as far as links let it pass; day stops are not counted on. */
function wallIncomeWh(network: Network, timeline: Timeline): Float64Array {
  const { steps, outlets, outletHours } = timeline;
  const { deviceCount, efficiencyIn, bankToMustHave } = network;
  const passedOn = Math.min(1, ...efficiencyIn.subarray(deviceCount)) * bankToMustHave;
  const powerW = wallPowerW(network);
  const mostOutlets = powerW.length - 1;
  return Float64Array.from({ length: steps }, (_, step) =>
    isCertainWall(network, timeline, step)
      ? powerW[Math.min(outlets[step]!, mostOutlets)]! * outletHours[step]! * passedOn
      : 0,
  );
}

/** By outlets, from none to one for each charger: what must-haves and banks together get, as far as they can take it, W. */
function wallPowerW(network: Network): readonly number[] {
  const { chargerTotalW, sinkCount, deviceCount, portCount, mustHave, wallLinkW } = network;
  let sinksW = 0;
  for (let sink = 0; sink < sinkCount; sink += 1) {
    if (sink < deviceCount && mustHave[sink] === 0) continue;
    sinksW += Math.max(0, ...wallLinkW.subarray(sink * portCount, (sink + 1) * portCount));
  }
  return Array.from({ length: chargerTotalW.length + 1 }, (_, outlets) => {
    const chargersW = chargerTotalW.subarray(0, outlets).reduce((sum, watts) => sum + watts, 0);
    return Math.min(chargersW, sinksW);
  });
}

type Warmth = Pick<
  TourCourse,
  'warmth' | 'warmthPlaces' | 'unreachableShare' | 'charges' | 'mostUnreachableShare'
>;

/** Cells within a degree of each other are alike; whether they may be charged is told exactly. */
function layWarmth(
  timeline: Timeline,
  { airDegC, cellsSleep }: Pick<CourseAround, 'airDegC' | 'cellsSleep'>,
): Warmth {
  const rows = new Map<string, number>();
  const unreachable: number[] = [];
  const charges: number[] = [];
  const warmth = Uint16Array.from({ length: timeline.steps }, (_, step) => {
    const cells = rides.map((ridesWhere) =>
      cellDegC(airDegC[step]!, placeOf(timeline, step), ridesWhere, cellsSleep),
    );
    const key = cells.map((degC) => `${Math.round(degC)} ${mayCharge(degC)}`).join();
    const known = rows.get(key);
    if (known !== undefined) return known;
    rows.set(key, rows.size);
    unreachable.push(...cells.map((degC) => 1 - usableShare(Math.round(degC))));
    charges.push(...cells.map((degC) => Number(mayCharge(degC))));
    return rows.size - 1;
  });
  return {
    warmth,
    warmthPlaces: rides.length,
    unreachableShare: Float64Array.from(unreachable),
    charges: Uint8Array.from(charges),
    mostUnreachableShare: Float64Array.from(rides, (_, place) =>
      Math.max(...unreachable.filter((_share, at) => at % rides.length === place)),
    ),
  };
}

function placeOf(timeline: Timeline, step: number) {
  const where = whereabouts[timeline.where[step]!]!;
  return { activity: mainActivity(timeline, step), indoors: where === 'wall', inCamp: where !== 'out' };
}

function mainActivity({ activityShare }: Timeline, step: number) {
  const shares = activities.map((_, a) => activityShare[step * activities.length + a]!);
  return activities[shares.indexOf(Math.max(...shares))]!;
}
