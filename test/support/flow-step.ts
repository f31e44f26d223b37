import { usualRules, type Rules } from '../../shared-types/scenario.ts';
import { rides } from '../../src-main/model/storage/cell-warmth.ts';
import type { BankModel } from '../../src-main/model/storage/bank.ts';
import type { ChargerModel } from '../../src-main/model/storage/charger.ts';
import type { DeviceModel } from '../../src-main/model/storage/device.ts';
import type { TourCourse } from '../../src-main/model/flow/course.ts';
import { compileNetwork, type KitModel, type Network } from '../../src-main/model/flow/network.ts';
import { createState, type StepState } from '../../src-main/model/flow/step-state.ts';

/*
 * One hour of a tour, for the rules of the energy flow one by one. Figures are chosen so that expected values can be worked
 * out in the head: watts are watt-hours, and efficiencies are round.
 */

/** A Power Delivery port of so many watts. */
export const pd = (powerW: number) => ({ standard: 'pd', powerW, cable: 'c-3a' }) as const;

/** A must-have of 20 Wh that takes 10 W and stores four fifths of it; low below 18 2/3 Wh. */
export function deviceOf(changes: Partial<DeviceModel> = {}): DeviceModel {
  const capacityWh = changes.capacityWh ?? 20;
  return {
    ...{ label: 'Device', key: 'device', mustHave: true, capacityWh, batteryWh: capacityWh },
    ...{ input: pd(10), efficiencyIn: 0.8, pluggedW: 0, ridesWhere: 'on-bicycle', useW: [1, 1, 1, 1] },
    ...changes,
  };
}

/** A bank of 40 Wh that takes 10 W, stores nine tenths and gives half of what it stored; it can't do both at once. */
export function bankOf(changes: Partial<BankModel> = {}): BankModel {
  return {
    ...{ label: 'Bank', key: 'bank', capacityWh: 40, input: pd(10), outputs: [pd(10)] },
    ...{ efficiencyIn: 0.9, efficiencyOut: 0.5, chargesWhileServing: false, ridesWhere: 'on-bicycle' },
    ...{ standbyW: 0, selfDischargePerDay: 0 },
    ...changes,
  };
}

/** A wall charger of one or more ports of the given powers. */
export function chargerOf(
  portsW: readonly number[],
  totalW = portsW.reduce((sum, watts) => sum + watts, 0),
): ChargerModel {
  return { key: portsW.join('+'), outputs: portsW.map(pd), totalW };
}

/** What the hour is like: a warm evening in camp without outlet, unless told otherwise. */
export interface HourAround {
  readonly rules: Partial<Rules>;
  /** By device, in order of service. */
  readonly needWh: readonly number[];
  readonly hubWh: number;
  readonly riding: boolean;
  readonly atPost: boolean;
  readonly outlets: number;
  /** What must be stored for the must-haves after the hour, all together and, by device, apart. */
  readonly reserveWh: number;
  readonly needToWallWh: readonly number[];
  /** Share of every store that the cold keeps in this hour, and in the coldest of the tour. */
  readonly unreachableShare: number;
  readonly mostUnreachableShare: number;
  readonly charges: boolean;
}

const calmHour: HourAround = {
  ...{ rules: {}, needWh: [], hubWh: 0, riding: false, atPost: false, outlets: 0 },
  ...{ reserveWh: 0, needToWallWh: [], unreachableShare: 0, mostUnreachableShare: 0, charges: true },
};

export interface HourOfKit {
  readonly network: Network;
  readonly course: TourCourse;
  readonly state: StepState;
}

/**
 * A kit at the start of an hour.
 *
 * @param storedWh by sink: devices in order of service, then banks in order of filling
 */
export function startHour(
  kit: Partial<Omit<KitModel, 'rules'>>,
  storedWh: readonly number[],
  around: Partial<HourAround> = {},
): HourOfKit {
  const hour = { ...calmHour, ...around };
  const network = compileNetwork({
    ...{ devices: [], banks: [], chargers: [] },
    ...kit,
    rules: { ...usualRules, ...hour.rules },
  });
  const state = createState(network, 1);
  state.storedWh.set(storedWh);
  state.reserveWh.fill(hour.reserveWh);
  state.socketHours.fill(1);
  state.turnHours.fill(1);
  state.outletHours.set(network.outletCount);
  network.capacityWh.forEach((wh, sink) => {
    state.unreachableWh[sink] = wh * hour.unreachableShare;
    state.mostUnreachableWh[sink] = wh * hour.mostUnreachableShare;
  });
  state.charges.fill(Number(hour.charges));
  return { network, course: courseOf(network, hour), state };
}

function courseOf({ deviceCount }: Network, hour: HourAround): TourCourse {
  const byDevice = (wh: readonly number[]): Float64Array =>
    Float64Array.from({ length: deviceCount }, (_, d) => wh[d] ?? 0);
  return {
    ...{ stepHours: 1, stepsPerDay: 1, days: 1, steps: 1 },
    needWh: byDevice(hour.needWh),
    needToWallWh: byDevice(hour.needToWallWh),
    riding: Uint8Array.of(Number(hour.riding)),
    atPost: Uint8Array.of(Number(hour.atPost)),
    outlets: Uint8Array.of(hour.outlets),
    outletHours: Float64Array.of(hour.outlets > 0 ? 1 : 0),
    luck: Int32Array.of(-1),
    hubWh: Float64Array.of(hour.hubWh),
    warmth: Uint16Array.of(0),
    warmthPlaces: rides.length,
    unreachableShare: new Float64Array(rides.length).fill(hour.unreachableShare),
    charges: new Uint8Array(rides.length).fill(Number(hour.charges)),
    mostUnreachableShare: new Float64Array(rides.length).fill(hour.mostUnreachableShare),
    mustHaveNeedWh: new Float64Array(1),
    wallIncomeWh: new Float64Array(1),
  };
}
