import type { Port } from '../../../shared-types/port.ts';
import type { BankModel } from '../storage/bank.ts';
import type { ChargerModel } from '../storage/charger.ts';
import { activities, type DeviceModel } from '../storage/device.ts';
import { linkW, standardLimitW } from '../storage/port-power.ts';

/** What is charged first at a wall. */
export type WallOrder = 'devices-first' | 'banks-first';
/** Where panel and hub may feed. */
export type UnsteadyFeed = 'bank-only' | 'device-too';

export interface KitModel {
  readonly devices: readonly DeviceModel[];
  readonly banks: readonly BankModel[];
  readonly chargers: readonly ChargerModel[];
  readonly wallOrder: WallOrder;
  readonly unsteadyFeed: UnsteadyFeed;
}

/**
 * A kit compiled to flat arrays for the run loop. Sinks are all stores a charger can fill: devices first (index d), then
 * banks (index deviceCount + b). Tables of two indices are flat, the first index times the count of the second plus the second.
 */
export interface Network {
  /** In order of service: must-haves before nice-to-haves. */
  readonly devices: readonly DeviceModel[];
  /** In order of filling and serving. */
  readonly banks: readonly BankModel[];
  readonly deviceCount: number;
  readonly bankCount: number;
  readonly portCount: number;
  readonly mustHave: Uint8Array;
  /** By sink. */
  readonly capacityWh: Float64Array;
  /** By sink: most power at the plug, W. */
  readonly limitW: Float64Array;
  /** By sink. */
  readonly efficiencyIn: Float64Array;
  /** By device and activity. */
  readonly useW: Float64Array;
  readonly efficiencyOut: Float64Array;
  readonly outletCount: Float64Array;
  readonly chargesWhileServing: Uint8Array;
  readonly standbyW: Float64Array;
  readonly selfDischargePerHour: Float64Array;
  /** By bank and device. */
  readonly serveLinkW: Float64Array;
  /** By port: which charger it belongs to; charger k is plugged in when more than k outlets are there. */
  readonly portCharger: Uint16Array;
  readonly chargerTotalW: Float64Array;
  /** By sink and port. */
  readonly wallLinkW: Float64Array;
  /** By sink and rank: the ports in the order the sink tries them. */
  readonly portOrder: Uint16Array;
  /** By device: use on a typical day, W; tells how long what is stored lasts. */
  readonly typicalUseW: Float64Array;
  /** Banks before devices at a wall. */
  readonly banksFirst: boolean;
  readonly feedsDevices: boolean;
}

const byKey = (a: { readonly key: string }, b: { readonly key: string }): number =>
  a.key < b.key ? -1 : a.key > b.key ? 1 : 0;

/** Compiles a kit. The result does not depend on the order of the lists given. */
export function compileNetwork(kit: KitModel): Network {
  const devices = [...kit.devices].sort((a, b) => Number(b.mustHave) - Number(a.mustHave) || byKey(a, b));
  const banks = [...kit.banks].sort((a, b) => b.capacityWh - a.capacityWh || byKey(a, b));
  const chargers = [...kit.chargers].sort((a, b) => b.totalW - a.totalW || byKey(a, b));
  const sinks = [...devices, ...banks];
  const ports = chargers.flatMap((charger, index) => charger.outputs.map((port) => ({ port, index })));
  const of = (pick: (bank: BankModel) => number): Float64Array => Float64Array.from(banks, pick);
  return {
    devices,
    banks,
    deviceCount: devices.length,
    bankCount: banks.length,
    portCount: ports.length,
    mustHave: Uint8Array.from(devices, (device) => Number(device.mustHave)),
    capacityWh: Float64Array.from(sinks, (sink) => sink.capacityWh),
    limitW: Float64Array.from(sinks, (sink) => sinkLimitW(sink.input)),
    efficiencyIn: Float64Array.from(sinks, (sink) => sink.efficiencyIn),
    useW: Float64Array.from(devices.flatMap((device) => activities.map((_, i) => device.useW[i]!))),
    efficiencyOut: of((bank) => bank.efficiencyOut),
    outletCount: of((bank) => bank.outputs.length),
    chargesWhileServing: Uint8Array.from(banks, (bank) => Number(bank.chargesWhileServing)),
    standbyW: of((bank) => bank.standbyW),
    selfDischargePerHour: of((bank) => bank.selfDischargePerHour),
    serveLinkW: Float64Array.from(
      banks.flatMap((bank) => devices.map((device) => bestLinkW(bank.outputs, device.input))),
    ),
    portCharger: Uint16Array.from(ports, ({ index }) => index),
    chargerTotalW: Float64Array.from(chargers, (charger) => charger.totalW),
    wallLinkW: Float64Array.from(sinks.flatMap((sink) => ports.map(({ port }) => linkW(port, sink.input)))),
    portOrder: Uint16Array.from(sinks.flatMap((sink) => portsByPreference(ports, sink.input))),
    typicalUseW: Float64Array.from(devices, typicalUseW),
    banksFirst: kit.wallOrder === 'banks-first',
    feedsDevices: kit.unsteadyFeed === 'device-too',
  };
}

function sinkLimitW(input: Port): number {
  return Math.min(input.powerW, standardLimitW[input.standard]);
}

function bestLinkW(outputs: readonly Port[], input: Port): number {
  return outputs.reduce((best, output) => Math.max(best, linkW(output, input)), 0);
}

/** The strongest link first; among equals the weakest port, so that a strong port stays free for who needs it. */
function portsByPreference(ports: readonly { readonly port: Port }[], input: Port): number[] {
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
