import type { TourCourse } from '../../flow/course.ts';
import type { Draws } from '../../flow/histories/draws.ts';
import type { Network } from '../../flow/network.ts';

/**
 * A kit as one store: all must-haves' batteries and all banks together, filled by every source through its best path, and
 * drawn on by must-haves alone. No port, no taper, no cold, no turn stands between. In every history it carries at least what
 * the kit does, and an item more never takes anything from it.
 *
 * All energy is counted in the cells of the must-haves, Wh.
 */
export interface PooledSupply {
  readonly capacityWh: number;
  /** Stored per Wh at the plug of the panels, and of the hub. */
  readonly ofPanel: number;
  readonly ofHub: number;
  /** By step: most that a wall gives. */
  readonly wallWh: Float64Array;
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
  return {
    capacityWh:
      must.reduce((sum, device) => sum + capacityWh[device]!, 0) +
      banks.reduce((sum, bank) => sum + capacityWh[bank]! * worth(bank), 0),
    ofPanel: Math.max(network.feedsDevices ? ofDevices : 0, throughBank),
    ofHub: Math.max(runsDirect ? ofDevices : 0, throughBank),
    wallWh: wallWh(network, course, [...must, ...banks], Math.max(ofDevices, throughBank)),
  };
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
  return Float64Array.from(course.outlets, (outlets, step) => {
    const chargersW = chargerW.slice(0, outlets).reduce((sum, watts) => sum + watts, 0);
    return Math.min(chargersW, sinksW) * course.outletHours[step]! * share;
  });
}

/** Rounding of sums over a tour in single precision, Wh. */
const roundingWh = 1e-3;

/** What the must-haves draw in a history as planned, by step, Wh. */
export function mustHaveDrawWh(
  { deviceCount, mustHave }: Network,
  { needWh, steps, stepsPerDay }: Pick<TourCourse, 'needWh' | 'steps' | 'stepsPerDay'>,
  { useScale }: Pick<Draws, 'useScale'>,
): Float32Array {
  return Float32Array.from({ length: steps }, (_, step) => {
    const day = Math.floor(step / stepsPerDay);
    let sum = 0;
    for (let d = 0; d < deviceCount; d += 1)
      sum += mustHave[d]! * needWh[step * deviceCount + d]! * useScale[day * deviceCount + d]!;
    return sum;
  });
}

/** Whether the pool carries the plan times a factor in a history. */
export function poolCarries(
  { capacityWh, ofPanel, ofHub, wallWh: wall }: PooledSupply,
  { steps, stepHours, luck, hubWh }: TourCourse,
  { panelW, outletIsFree }: Draws,
  drawWh: Float32Array,
  factor: number,
): boolean {
  let stored = capacityWh;
  for (let step = 0; step < steps; step += 1) {
    const draw = luck[step]!;
    stored += panelW[step]! * stepHours * ofPanel + hubWh[step]! * ofHub - drawWh[step]! * factor;
    if (draw < 0 || outletIsFree[draw] === 1) stored += wall[step]!;
    if (stored < -roundingWh) return false;
    if (stored > capacityWh) stored = capacityWh;
  }
  return true;
}
