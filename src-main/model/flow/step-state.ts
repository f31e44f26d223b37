import { accounts } from './ledger.ts';
import type { Network } from './network.ts';

/** What the run loop changes as it walks. Made once, used for every step of every run. */
export interface StepState {
  /** By sink: energy stored now, Wh. */
  readonly storedWh: Float64Array;
  /** Devices in the order of need of this step: see `orderByNeed`. */
  readonly order: Uint16Array;
  /** By device: use of this step that no battery covered yet, Wh. */
  readonly deficitWh: Float64Array;
  /** By sink: time left in this step to take charge, h. Each has one socket. */
  readonly sinkHours: Float64Array;
  /** By bank: outlet time left in this step, h; n outlets have n times the step. */
  readonly outletHours: Float64Array;
  /** By bank: 1 once it took charge, or gave, in this step. */
  readonly tookCharge: Uint8Array;
  readonly gaveCharge: Uint8Array;
  /** By port: time left in this step, h. */
  readonly portHours: Float64Array;
  /** By charger: energy left to give in this step, Wh. */
  readonly chargerWh: Float64Array;
  /** Accounts of this step. */
  readonly row: Float64Array;
}

export function createState(network: Network): StepState {
  const sinks = network.deviceCount + network.bankCount;
  return {
    storedWh: new Float64Array(sinks),
    order: Uint16Array.from({ length: network.deviceCount }, (_, device) => device),
    deficitWh: new Float64Array(network.deviceCount),
    sinkHours: new Float64Array(sinks),
    outletHours: new Float64Array(network.bankCount),
    tookCharge: new Uint8Array(network.bankCount),
    gaveCharge: new Uint8Array(network.bankCount),
    portHours: new Float64Array(network.portCount),
    chargerWh: new Float64Array(network.chargerTotalW.length),
    row: new Float64Array(accounts.length),
  };
}

/** A tour starts with every battery full. */
export function fillUp(network: Network, state: StepState): void {
  state.storedWh.set(network.capacityWh);
}

export function beginStep(network: Network, state: StepState, hours: number): void {
  state.row.fill(0);
  state.sinkHours.fill(hours);
  state.portHours.fill(hours);
  state.tookCharge.fill(0);
  state.gaveCharge.fill(0);
  for (let b = 0; b < network.bankCount; b += 1) state.outletHours[b] = network.outletCount[b]! * hours;
}
