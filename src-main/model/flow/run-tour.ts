import { activities } from '../storage/device.ts';
import {
  bankLosses,
  chargeAtWall,
  feedDevices,
  fillBuffers,
  serveFromBanks,
  useOwnBatteries,
} from './allocation.ts';
import { account, accounts, addRow } from './ledger.ts';
import { orderByNeed } from './need.ts';
import type { Network } from './network.ts';
import { beginStep, fillUp, type StepState } from './step-state.ts';
import type { Supply } from './supply.ts';
import type { Timeline } from './timeline.ts';

/** What a run writes down besides its verdict. */
export interface RunRecord {
  /** By step: all energy stored, Wh. */
  readonly storedWh: Float64Array;
  /** By day and account, Wh. */
  readonly ledger: Float64Array;
}

/** The first time a must-have found no energy; step is -1 when none did. */
export interface FlatMustHave {
  step: number;
  device: number;
}

/** Use left unserved below this is rounding, Wh. */
const roundingWh = 1e-9;

export function createRecord(timeline: Timeline): RunRecord {
  return {
    storedWh: new Float64Array(timeline.steps),
    ledger: new Float64Array(timeline.days * accounts.length),
  };
}

/**
 * Walks one tour through one history.
 *
 * @param useFactor multiplies all device use; 1 is the plan
 * @param state scratch, made by `createState` for this network
 * @param flat receives the first flat must-have
 * @param record receives the course; without it the walk stops at the first flat must-have
 */
export function runTour(
  network: Network,
  timeline: Timeline,
  supply: Supply,
  useFactor: number,
  state: StepState,
  flat: FlatMustHave,
  record: RunRecord | null,
): void {
  flat.step = -1;
  flat.device = -1;
  fillUp(network, state);
  let storedBefore = totalWh(state.storedWh);
  for (let step = 0; step < timeline.steps; step += 1) {
    walkStep(network, timeline, supply, step, useFactor, state);
    settleDeficits(network, state, step, flat);
    if (record === null) {
      if (flat.step >= 0) return;
      continue;
    }
    const stored = totalWh(state.storedWh);
    state.row[account.stored] = stored - storedBefore;
    storedBefore = stored;
    record.storedWh[step] = stored;
    addRow(record.ledger, state.row, Math.floor(step / timeline.stepsPerDay) * accounts.length);
  }
}

/** Applies the six rules to one step. */
export function walkStep(
  network: Network,
  timeline: Timeline,
  supply: Supply,
  step: number,
  useFactor: number,
  state: StepState,
): void {
  const hours = timeline.stepHours;
  const outlets = timeline.outlets[step]!;
  const panelWh = supply.panelW[step]! * hours;
  const hubWh = supply.hubW[step]! * hours;
  beginStep(network, state, hours);
  useOwnBatteries(network, state, timeline.activityShare, step * activities.length, useFactor, hours);
  orderByNeed(network, state);
  chargeAtWall(network, state, outlets, supply.outletShare[step]!, hours);
  const offeredWh = feedDevices(network, state, panelWh, hubWh, hours);
  serveFromBanks(network, state, outlets === 0 && timeline.riding[step] === 0);
  fillBuffers(network, state, offeredWh, hours);
  bankLosses(network, state, hours);
  state.row[account.panel] = panelWh;
  state.row[account.hub] = hubWh;
}

function settleDeficits(network: Network, state: StepState, step: number, flat: FlatMustHave): void {
  for (let d = 0; d < network.deviceCount; d += 1) {
    const deficit = state.deficitWh[d]!;
    state.row[account.unserved]! += deficit;
    if (deficit > roundingWh && network.mustHave[d] === 1 && flat.step < 0) {
      flat.step = step;
      flat.device = d;
    }
  }
}

function totalWh(storedWh: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < storedWh.length; i += 1) sum += storedWh[i]!;
  return sum;
}
