import type { TourCourse } from './course.ts';
import type { Network } from './network.ts';

/** Where energy comes from, in the order of the tables of what was taken. */
export const sources = ['wall', 'panel', 'hub'] as const;
export type Source = (typeof sources)[number];
/** Index of each source. The run loop uses the plain constants: a field of a shared object is looked up at each use. */
export const fromWall = 0;
export const fromPanel = 1;
export const fromHub = 2;
export const from: Readonly<Record<Source, number>> = { wall: fromWall, panel: fromPanel, hub: fromHub };

/**
 * A link as the rules hand it to each other: its power at the plug, how long it may last, the most the source has to give,
 * and, in return, what was taken. It stands in an array of the state: as arguments and results of functions too big to be
 * inlined, numbers with a fraction would each be put on the heap, and the loop is to allocate nothing.
 */
export const linkPowerW = 0;
export const linkHours = 1;
export const linkMostWh = 2;
export const linkTakenWh = 3;
export const link = {
  powerW: linkPowerW,
  hours: linkHours,
  mostWh: linkMostWh,
  takenWh: linkTakenWh,
} as const;
const linkLength = 4;

/** What a warmth does to the cells of a kit. */
export interface WarmCells {
  /** By sink: energy out of reach for the cold, Wh. */
  readonly unreachableWh: Float64Array;
  /** By sink: 1 where the cells are neither too cold nor too hot to be charged. */
  readonly charges: Uint8Array;
}

/** What the run loop changes as it walks. Made once, used for every step of every run. */
export interface StepState {
  /** By sink: energy stored now, Wh. */
  readonly storedWh: Float64Array;
  /** By device: what multiplies its planned use today. */
  readonly useScale: Float64Array;
  /** Devices in the order of need of this step: see `orderByNeed`. */
  readonly order: Uint16Array;
  /** By device: use of this step that nothing covered yet, Wh. */
  readonly deficitWh: Float64Array;
  /** By device: 1 while it is used in this step; kept only where a device draws more for being plugged in. */
  readonly inUse: Uint8Array;
  /** As the cells are in this step: see `WarmCells`. */
  unreachableWh: WarmCells['unreachableWh'];
  charges: WarmCells['charges'];
  /** By sink: energy out of reach in the coldest step of the tour, Wh. */
  readonly mostUnreachableWh: Float64Array;
  /** By sink: what is left of its one socket in this step, as hours at its full power. */
  readonly socketHours: Float64Array;
  /** By bank: time left in this step to be charged in, h. */
  readonly turnHours: Float64Array;
  /** By bank: outlet time left in this step, h; n outlets have n times the step. */
  readonly outletHours: Float64Array;
  /** The link being made: see `link`. */
  readonly link: Float64Array;
  /** One entry: hours of this step in which there is an outlet. */
  readonly wallHours: Float64Array;
  /** One entry: what nice-to-haves may still take from the banks in this step, Wh at the plug. */
  readonly spareWh: Float64Array;
  /** By port: time left in this step, h. */
  readonly portHours: Float64Array;
  /** By charger: energy left to give in this step, Wh. */
  readonly chargerWh: Float64Array;
  /** By source: still on offer in this step, at its plug, Wh; walls are counted by port instead. */
  readonly offerWh: Float64Array;
  /** What multiplies the planned use of the whole tour; 1 is the plan. */
  useFactor: number;
  /** By step: what must be stored for the must-haves, Wh, and the factor it was laid out for; see `layReserve`. */
  readonly reserveWh: Float64Array;
  reserveFactor: number;
  /** Which warmth `unreachableWh` and `charges` are of now; -1 before the first step. */
  warmth: number;
  /** By warmth of `cellsOf`: what it does to the cells; see `warm`. */
  cells: readonly WarmCells[];
  cellsOf: TourCourse | null;
  /* Sums since they were last cleared, Wh; the walk itself never reads them. */
  /** By source and sink: taken at the sink's plug. */
  readonly takenWh: Float64Array;
  /** By bank and device: given at the bank's plug. */
  readonly servedWh: Float64Array;
  /** By bank: lost to standby and self-discharge. */
  readonly idleLossWh: Float64Array;
  /** By device: drawn at the plug only because it was plugged in. */
  readonly pluggedWh: Float64Array;
  /** By device: use that was not served. */
  readonly unservedWh: Float64Array;
  /** The first must-have without energy: step and device, -1 while none is. */
  flatStep: number;
  flatDevice: number;
}

/** @param steps of the tour to be walked */
export function createState(network: Network, steps: number): StepState {
  const { deviceCount, bankCount, sinkCount } = network;
  return {
    storedWh: new Float64Array(sinkCount),
    useScale: new Float64Array(deviceCount).fill(1),
    order: Uint16Array.from({ length: deviceCount }, (_, device) => device),
    deficitWh: new Float64Array(deviceCount),
    inUse: new Uint8Array(deviceCount),
    unreachableWh: new Float64Array(sinkCount),
    mostUnreachableWh: new Float64Array(sinkCount),
    charges: new Uint8Array(sinkCount).fill(1),
    socketHours: new Float64Array(sinkCount),
    turnHours: new Float64Array(bankCount),
    outletHours: new Float64Array(bankCount),
    link: new Float64Array(linkLength),
    wallHours: new Float64Array(1),
    spareWh: new Float64Array(1),
    portHours: new Float64Array(network.portCount),
    chargerWh: new Float64Array(network.chargerTotalW.length),
    offerWh: new Float64Array(sources.length),
    useFactor: 1,
    reserveWh: new Float64Array(steps),
    reserveFactor: -1,
    warmth: -1,
    cells: [],
    cellsOf: null,
    takenWh: new Float64Array(sources.length * sinkCount),
    servedWh: new Float64Array(bankCount * deviceCount),
    idleLossWh: new Float64Array(bankCount),
    pluggedWh: new Float64Array(deviceCount),
    unservedWh: new Float64Array(deviceCount),
    flatStep: -1,
    flatDevice: -1,
  };
}

/** A tour starts with every battery full, and nothing has happened yet. */
export function startTour(network: Network, course: TourCourse, state: StepState): void {
  for (let sink = 0; sink < network.sinkCount; sink += 1) {
    const capacityWh = network.capacityWh[sink]!;
    state.storedWh[sink] = capacityWh;
    state.mostUnreachableWh[sink] = capacityWh * course.mostUnreachableShare[network.ridesWhere[sink]!]!;
  }
  for (let d = 0; d < network.deviceCount; d += 1) {
    state.order[d] = d;
    state.deficitWh[d] = 0;
  }
  state.warmth = -1;
  state.flatStep = -1;
  state.flatDevice = -1;
}

export function clearSums(state: StepState): void {
  state.takenWh.fill(0);
  state.servedWh.fill(0);
  state.idleLossWh.fill(0);
  state.pluggedWh.fill(0);
  state.unservedWh.fill(0);
}

/** All energy stored now, Wh. */
export function totalStoredWh({ storedWh }: StepState): number {
  let sum = 0;
  for (let sink = 0; sink < storedWh.length; sink += 1) sum += storedWh[sink]!;
  return sum;
}
