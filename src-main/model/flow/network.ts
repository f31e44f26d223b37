import type { Port, SinkPort } from '../../../shared-types/port.ts';
import type { Rules } from '../../../shared-types/scenario.ts';
import type { BankModel } from '../storage/bank.ts';
import { rides } from '../storage/cell-warmth.ts';
import type { ChargerModel } from '../storage/charger.ts';
import { activities, type DeviceModel } from '../storage/device.ts';
import { linkW, sinkLimitW, sourceLimitW } from '../storage/port-power.ts';
import { fullShare, taperRoomWh } from '../storage/taper.ts';

export interface KitModel {
  readonly devices: readonly DeviceModel[];
  readonly banks: readonly BankModel[];
  readonly chargers: readonly ChargerModel[];
  readonly rules: Rules;
}

/**
 * A kit compiled to flat arrays for the run loop. Sinks are all stores a charger can fill: devices first (index d), then
 * banks (index deviceCount + b). Tables of two indices are flat, the first index times the count of the second plus the second.
 */
export interface Network {
  /** In order of service: must-haves before nice-to-haves. */
  readonly devices: readonly DeviceModel[];
  /** In order of filling; they serve in the opposite order, so that one fills while another serves. */
  readonly banks: readonly BankModel[];
  readonly deviceCount: number;
  readonly bankCount: number;
  readonly sinkCount: number;
  readonly portCount: number;
  readonly mustHave: Uint8Array;
  /** By sink. */
  readonly capacityWh: Float64Array;
  /** By sink: room left when a full-power charge begins to taper. */
  readonly taperRoomWh: Float64Array;
  /** By sink: filled so far, a wall leaves it alone. */
  readonly fullWh: Float64Array;
  /** By device: below this, a bank fills it. */
  readonly lowWh: Float64Array;
  /** By sink: most power at the plug, W. */
  readonly limitW: Float64Array;
  /** By sink. */
  readonly efficiencyIn: Float64Array;
  /** By sink: index into `rides`. */
  readonly ridesWhere: Uint8Array;
  /** By device: drawn on top while it is charged in use, W. */
  readonly pluggedW: Float64Array;
  /** By device and activity. */
  readonly useW: Float64Array;
  /** By device: use on a typical day, W; tells how long what is stored lasts. */
  readonly typicalUseW: Float64Array;
  readonly efficiencyOut: Float64Array;
  readonly outletCount: Float64Array;
  readonly chargesWhileServing: Uint8Array;
  readonly standbyW: Float64Array;
  readonly selfDischargePerDay: Float64Array;
  /** By bank and device. */
  readonly serveLinkW: Float64Array;
  /** By device and rank: the banks in the order they serve it. */
  readonly serveOrder: Uint16Array;
  /** By port: which charger it belongs to; charger k is plugged in when more than k outlets are there. */
  readonly portCharger: Uint16Array;
  /** All ports of a charger together. */
  readonly chargerTotalW: Float64Array;
  /** By sink and port. */
  readonly wallLinkW: Float64Array;
  /** By sink and rank: the ports in the order the sink tries them. */
  readonly portOrder: Uint16Array;
  /** Least share of what leaves a bank's cells that ends in a must-have's. */
  readonly bankToMustHave: number;
  readonly hasDirectLoads: boolean;
  /** Whether any device draws more for being plugged in while it is used. */
  readonly hasPluggedDraw: boolean;
  readonly banksFirst: boolean;
  readonly feedsDevices: boolean;
  readonly banksOnlyAtPost: boolean;
  readonly rations: boolean;
}

/*
 * A device that a bank would fill in minutes is not plugged into it, nor does a must-have that full hold back others: it is
 * low once a tenth is missing, or as much as it takes in this time (common practice, no source).
 */
const lowShare = 0.9;
const notWorthPluggingH = 1 / 6;

const byKey = (a: { readonly key: string }, b: { readonly key: string }): number =>
  a.key < b.key ? -1 : a.key > b.key ? 1 : 0;

/** The devices of a kit as the run loop has them: must-haves first, and never in the order of a list. */
export function inServiceOrder(devices: readonly DeviceModel[]): readonly DeviceModel[] {
  return [...devices].sort((a, b) => Number(b.mustHave) - Number(a.mustHave) || byKey(a, b));
}

/** Compiles a kit. The result does not depend on the order of the lists given. */
export function compileNetwork({ rules, ...kit }: KitModel): Network {
  const devices = inServiceOrder(kit.devices);
  const banks = [...kit.banks].sort((a, b) => b.capacityWh - a.capacityWh || byKey(a, b));
  const chargers = [...kit.chargers].sort((a, b) => b.totalW - a.totalW || byKey(a, b));
  const sinks = [...devices, ...banks];
  return {
    devices,
    banks,
    deviceCount: devices.length,
    bankCount: banks.length,
    sinkCount: sinks.length,
    mustHave: Uint8Array.from(devices, (device) => Number(device.mustHave)),
    capacityWh: Float64Array.from(sinks, (sink) => sink.capacityWh),
    taperRoomWh: Float64Array.from(sinks, (sink) => taperRoomWh(chargingWh(sink))),
    fullWh: Float64Array.from(sinks, (sink) => sink.capacityWh * fullShare),
    lowWh: Float64Array.from(devices, lowWhOf),
    limitW: Float64Array.from(sinks, (sink) => sinkLimitW(sink.input)),
    efficiencyIn: Float64Array.from(sinks, (sink) => sink.efficiencyIn),
    ridesWhere: Uint8Array.from(sinks, (sink) => rides.indexOf(sink.ridesWhere)),
    pluggedW: Float64Array.from(devices, (device) => device.pluggedW),
    useW: Float64Array.from(devices.flatMap((device) => activities.map((_, i) => device.useW[i]!))),
    typicalUseW: Float64Array.from(devices, typicalUseW),
    ...bankTables(banks),
    ...servingTables(devices, banks),
    ...wallTables(chargers, sinks),
    hasDirectLoads: devices.some((device) => device.capacityWh === 0),
    hasPluggedDraw: devices.some((device) => device.pluggedW > 0),
    banksFirst: rules.atWall === 'banks-first',
    feedsDevices: rules.unsteadySource === 'device-too',
    banksOnlyAtPost: rules.atPost === 'banks-only',
    rations: rules.whenShort === 'nice-to-haves-wait',
  };
}

function lowWhOf({ capacityWh, input, efficiencyIn }: DeviceModel): number {
  const quickWh = sinkLimitW(input) * efficiencyIn * notWorthPluggingH;
  return Math.max(capacityWh * lowShare, capacityWh - quickWh);
}

function chargingWh(sink: DeviceModel | BankModel): number {
  return 'batteryWh' in sink ? sink.batteryWh : sink.capacityWh;
}

function bankTables(banks: readonly BankModel[]) {
  const of = (pick: (bank: BankModel) => number): Float64Array => Float64Array.from(banks, pick);
  return {
    efficiencyOut: of((bank) => bank.efficiencyOut),
    outletCount: of((bank) => bank.outputs.length),
    chargesWhileServing: Uint8Array.from(banks, (bank) => Number(bank.chargesWhileServing)),
    standbyW: of((bank) => bank.standbyW),
    selfDischargePerDay: of((bank) => bank.selfDischargePerDay),
  };
}

function servingTables(devices: readonly DeviceModel[], banks: readonly BankModel[]) {
  const mustHaves = devices.filter(({ mustHave }) => mustHave);
  const least = (values: readonly number[]): number => Math.min(1, ...values);
  return {
    serveLinkW: Float64Array.from(
      banks.flatMap((bank) => devices.map((device) => bestLinkW(bank.outputs, device.input))),
    ),
    serveOrder: Uint16Array.from(devices.flatMap((device) => banksByService(banks, device.input))),
    bankToMustHave:
      least(banks.map(({ efficiencyOut }) => efficiencyOut)) *
      least(mustHaves.map(({ efficiencyIn }) => efficiencyIn)),
  };
}

function bestLinkW(outputs: readonly Port[], input: SinkPort): number {
  return outputs.reduce((best, output) => Math.max(best, linkW(output, input)), 0);
}

/** The strongest link first; among equals the bank that is filled last. */
function banksByService(banks: readonly BankModel[], input: SinkPort): number[] {
  const order = banks.map((_, index) => index);
  const link = (index: number): number => bestLinkW(banks[index]!.outputs, input);
  return order.sort((a, b) => link(b) - link(a) || b - a);
}

function wallTables(chargers: readonly ChargerModel[], sinks: readonly (DeviceModel | BankModel)[]) {
  const ports = chargers.flatMap((charger, index) => charger.outputs.map((port) => ({ port, index })));
  return {
    portCount: ports.length,
    portCharger: Uint16Array.from(ports, ({ index }) => index),
    chargerTotalW: Float64Array.from(chargers, ({ totalW, outputs }) =>
      Math.min(
        totalW,
        outputs.reduce((sum, port) => sum + sourceLimitW(port), 0),
      ),
    ),
    wallLinkW: Float64Array.from(sinks.flatMap((sink) => ports.map(({ port }) => linkW(port, sink.input)))),
    portOrder: Uint16Array.from(sinks.flatMap((sink) => portsByPreference(ports, sink.input))),
  };
}

/** The strongest link first; among equals the weakest port, so that a strong port stays free for who needs it. */
function portsByPreference(ports: readonly { readonly port: Port }[], input: SinkPort): number[] {
  const order = ports.map((_, index) => index);
  return order.sort((a, b) => {
    const byLink = linkW(ports[b]!.port, input) - linkW(ports[a]!.port, input);
    return byLink || ports[a]!.port.powerW - ports[b]!.port.powerW || a - b;
  });
}

/** Hours of a typical day in each activity, in the order of `activities` (common practice, no source). */
const typicalHours = [9, 4, 6, 5] as const;

function typicalUseW({ useW }: DeviceModel): number {
  return typicalHours.reduce((sum, hours, index) => sum + (useW[index]! * hours) / 24, 0);
}
