import { withUnit, wordsLocale } from '../../../shared-types/figures.ts';
import type { ItemOf } from '../../../shared-types/item.ts';
import type { SinkPort } from '../../../shared-types/port.ts';
import type { BankModel } from '../../model/storage/bank.ts';
import type { DeviceModel } from '../../model/storage/device.ts';
import { linkW, sinkLimitW, sourceLimitW } from '../../model/storage/port-power.ts';
import { hoursToFull } from '../../model/storage/hours-to-full.ts';
import { taperRoomWh } from '../../model/storage/taper.ts';
import { bankModels, ofKind, type CarriedItem } from '../assemble/kit.ts';
import { inList, quoted } from './name-list.ts';
import type { RulesGround } from './rules-ground.ts';

/** What ports there are, and how long each must-have and each kind of bank is on one. */
export function fillingSteps({ lines, ready }: Pick<RulesGround, 'lines' | 'ready'>): readonly string[] {
  const chargers = ofKind(lines, 'wall-charger');
  const ports = chargers.flatMap(({ item }) => portsOf(item));
  if (ports.length === 0) return [];
  const banks = ofKind(lines, 'bank').flatMap((line) => bankModels([{ ...line, carried: 1 }]));
  const mustHaves = ready.network.devices.filter(({ mustHave }) => mustHave);
  return [
    ...chargers.map(portWords),
    ...timesOf('Must-haves', mustHaves, ports),
    ...timesOf('Banks', banks, ports),
  ];
}

function portWords({ item, carried }: CarriedItem<ItemOf<'wall-charger'>>): string {
  const powers = item.outputs.map((port) => inW(sourceLimitW(port)));
  const name = carried === 1 ? quoted(item.label) : `Each of ${carried} × ${quoted(item.label)}`;
  const [only, ...others] = powers;
  if (others.length === 0) return `${name} has one port: ${only}.`;
  return `${name} has ${powers.length} ports: ${inList(powers)}, ${inW(item.totalW)} together.`;
}

const inW = (watts: number): string => withUnit(watts, 'W', { digits: 1, locale: wordsLocale });

interface WallPort {
  readonly labelW: number;
  /** Into a sink, alone on the charger, W. */
  readonly intoW: (input: SinkPort) => number;
}

function portsOf({ outputs, totalW }: ItemOf<'wall-charger'>): readonly WallPort[] {
  return outputs.map((port) => ({
    labelW: sourceLimitW(port),
    intoW: (input) => Math.min(totalW, linkW(port, input)),
  }));
}

type StoreToFill = DeviceModel | BankModel;

/** Of each store with a battery, alike ones once. */
function timesOf(who: string, stores: readonly StoreToFill[], ports: readonly WallPort[]): readonly string[] {
  const times = stores.filter(({ capacityWh }) => capacityWh > 0).map((store) => timeWords(store, ports));
  if (times.length === 0) return [];
  return [`${who} from empty to full, each alone on its best port: ${inList([...new Set(times)])}.`];
}

function timeWords(store: StoreToFill, ports: readonly WallPort[]): string {
  const best = ports.reduce((one, other) => (isBetter(other, one, store.input) ? other : one));
  const hours = hoursToFull(
    store.capacityWh,
    taperRoomWh('batteryWh' in store ? store.batteryWh : store.capacityWh),
    best.intoW(store.input) * store.efficiencyIn,
    sinkLimitW(store.input) * store.efficiencyIn,
  );
  const time = withUnit(hours, 'h', { digits: 1, locale: wordsLocale });
  return `${quoted(store.label)} about ${time} (${inW(best.labelW)} port)`;
}

/** The strongest link; among equals the weakest port, as the network has it. */
function isBetter(one: WallPort, other: WallPort, input: SinkPort): boolean {
  const more = one.intoW(input) - other.intoW(input);
  return more === 0 ? one.labelW < other.labelW : more > 0;
}
