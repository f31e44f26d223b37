import type { TourCourse } from '../../flow/course.ts';
import type { Draws } from '../../flow/histories/draws.ts';
import type { Network } from '../../flow/network.ts';

/**
 * A kit as one store: all must-haves' batteries and all banks together, filled by every source through its best path, and
 * drawn on by must-haves alone. No port, no taper, no cold, no turn stands between. In every history it carries at least what
 * the kit does, and an item more never takes anything from it.
 *
 * All energy is counted in the cells of the must-haves, Wh, and by the hour: what an hour brings counts before what it takes,
 * so that shorter steps never show more.
 */
export interface PooledSupply {
  readonly capacityWh: number;
  /** Stored per Wh at the plug of the panels. */
  readonly ofPanel: number;
  /** By hour: what the hub gives, and the walls that are certain. */
  readonly steadyWh: Float32Array;
  /** What walls give that are free in some histories. */
  readonly luckyWalls: readonly LuckyWall[];
}

interface LuckyWall {
  readonly hour: number;
  /** Index into the luck of a history. */
  readonly draw: number;
  readonly wh: number;
}

/** What a history brings to a pool. */
export interface PooledHistory extends Pick<Draws, 'outletIsFree'> {
  /** By hour: at the plug of the panels, Wh. */
  readonly panelWh: Float32Array;
  /** By hour: drawn by the must-haves as planned, Wh. */
  readonly drawWh: Float32Array;
}

/** Pools a kit. */
export function pooledSupply(network: Network, course: TourCourse): PooledSupply {
  const { deviceCount, sinkCount, capacityWh, efficiencyIn, efficiencyOut, mustHave } = network;
  const sinks = Array.from({ length: sinkCount }, (_, sink) => sink);
  const must = sinks.filter((sink) => mustHave[sink] === 1);
  const banks = sinks.filter((sink) => sink >= deviceCount);
  const most = (values: readonly number[]): number => Math.max(0, ...values);
  const ofDevices = most(must.map((device) => efficiencyIn[device]!));
  const worth = (bank: number): number => efficiencyOut[bank - deviceCount]! * ofDevices;
  const throughBank = most(banks.map((bank) => efficiencyIn[bank]! * worth(bank)));
  // A hub runs loads without a battery whatever the rule.
  const runsDirect = network.feedsDevices || network.hasDirectLoads;
  const ofHub = Math.max(runsDirect ? ofDevices : 0, throughBank);
  const atWallWh = wallWh(network, course, [...must, ...banks], Math.max(ofDevices, throughBank));
  const steady = (step: number): number =>
    course.hubWh[step]! * ofHub + (course.luck[step]! < 0 ? atWallWh[step]! : 0);
  return {
    capacityWh:
      must.reduce((sum, device) => sum + capacityWh[device]!, 0) +
      banks.reduce((sum, bank) => sum + capacityWh[bank]! * worth(bank), 0),
    ofPanel: Math.max(network.feedsDevices ? ofDevices : 0, throughBank),
    steadyWh: byHour(course, steady),
    luckyWalls: luckyWalls(course, atWallWh),
  };
}

const hoursPerDay = 24;

/** Sums over the steps of each hour. */
function byHour(
  { steps, stepsPerDay }: Pick<TourCourse, 'steps' | 'stepsPerDay'>,
  ofStep: (step: number) => number,
): Float32Array {
  const stepsPerHour = stepsPerDay / hoursPerDay;
  const sums = new Float32Array(steps / stepsPerHour);
  for (let step = 0; step < steps; step += 1) sums[Math.floor(step / stepsPerHour)]! += ofStep(step);
  return sums;
}

function luckyWalls({ luck, stepsPerDay }: TourCourse, atWallWh: Float64Array): readonly LuckyWall[] {
  const stepsPerHour = stepsPerDay / hoursPerDay;
  return Array.from(luck, (draw, step) => ({
    hour: Math.floor(step / stepsPerHour),
    draw,
    wh: atWallWh[step]!,
  })).filter(({ draw, wh }) => draw >= 0 && wh > 0);
}

/** Each port gives no more than its strongest link, each sink takes no more than its own. */
function wallWh(network: Network, course: TourCourse, sinks: readonly number[], share: number): Float64Array {
  const { chargerTotalW, portCharger, portCount, wallLinkW } = network;
  const ports = Array.from({ length: portCount }, (_, port) => port);
  const most = (values: readonly number[]): number => Math.max(0, ...values);
  const linkW = (sink: number, port: number): number => wallLinkW[sink * portCount + port]!;
  const sinksW = sinks.reduce((sum, sink) => sum + most(ports.map((port) => linkW(sink, port))), 0);
  const chargerW = Array.from(chargerTotalW, (totalW, charger) => {
    const own = ports.filter((port) => portCharger[port] === charger);
    const portsW = own.reduce((sum, port) => sum + most(sinks.map((sink) => linkW(sink, port))), 0);
    return Math.min(totalW, portsW);
  });
  const givenW = byOutlets(chargerW).map((chargersW) => Math.min(chargersW, sinksW) * share);
  return Float64Array.from(
    course.outlets,
    (outlets, step) => givenW[Math.min(outlets, chargerW.length)]! * course.outletHours[step]!,
  );
}

/** What the first so many chargers give together, by how many: from none to all. */
function byOutlets(chargerW: readonly number[]): readonly number[] {
  const upTo = (outlets: number): readonly number[] => chargerW.slice(0, outlets);
  return [0, ...chargerW].map((_, outlets) => upTo(outlets).reduce((sum, watts) => sum + watts, 0));
}

/** Rounding of sums over a tour in single precision, Wh. */
const roundingWh = 1e-3;

/** What the must-haves draw in a history as planned, by hour, Wh. */
export function mustHaveDrawWh(
  { deviceCount, mustHave }: Network,
  course: Pick<TourCourse, 'needWh' | 'steps' | 'stepsPerDay'>,
  { useScale }: Pick<Draws, 'useScale'>,
): Float32Array {
  return byHour(course, (step) => {
    const day = Math.floor(step / course.stepsPerDay);
    let sum = 0;
    for (let d = 0; d < deviceCount; d += 1)
      sum += mustHave[d]! * course.needWh[step * deviceCount + d]! * useScale[day * deviceCount + d]!;
    return sum;
  });
}

/** What panels give at the plug in a history, by hour, Wh. */
export function panelWhByHour(
  course: Pick<TourCourse, 'steps' | 'stepsPerDay' | 'stepHours'>,
  { panelW }: Pick<Draws, 'panelW'>,
): Float32Array {
  return byHour(course, (step) => panelW[step]! * course.stepHours);
}

/** Whether the pool carries the plan times a factor in a history. */
export function poolCarries(
  { capacityWh, ofPanel, steadyWh, luckyWalls: lucky }: PooledSupply,
  { panelWh, drawWh, outletIsFree }: PooledHistory,
  factor: number,
): boolean {
  let stored = capacityWh;
  let next = 0;
  for (let hour = 0; hour < steadyWh.length; hour += 1) {
    stored += panelWh[hour]! * ofPanel + steadyWh[hour]! - drawWh[hour]! * factor;
    for (; next < lucky.length && lucky[next]!.hour === hour; next += 1)
      if (outletIsFree[lucky[next]!.draw] === 1) stored += lucky[next]!.wh;
    if (stored < -roundingWh) return false;
    if (stored > capacityWh) stored = capacityWh;
  }
  return true;
}
