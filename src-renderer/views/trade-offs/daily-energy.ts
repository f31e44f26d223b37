import type { DayLedger, DeviceDay, DeviceLedger, ScenarioResult } from '../../../shared-types/comparison.ts';
import { barLooks, solidBar, type BarLook } from '../../parts/charts/bar-looks.ts';

/** Who gives it, however it comes, and the verb that goes with it. */
export const origins = {
  walls: { words: 'Walls', verb: 'give' },
  panel: { words: 'The panel', verb: 'gives' },
  hub: { words: 'The hub', verb: 'gives' },
  start: { words: 'Banks as filled before the tour', verb: 'give' },
} as const;
export type Origin = keyof typeof origins;

/** A way that energy comes, and how its bars are drawn; `colour` names a custom property. */
export interface EnergySource {
  readonly origin: Origin;
  readonly words: string;
  readonly colour: string;
  readonly look: BarLook;
  /** Each day, Wh. */
  readonly wh: readonly number[];
}

/** What the chart of daily energy shows: of all devices together, or of one. */
export interface DailyEnergy {
  /** The name of the one device; null for all. */
  readonly device: string | null;
  readonly days: readonly DayLedger[];
  readonly sources: readonly EnergySource[];
  readonly demandWh: readonly number[];
  readonly unservedWh: readonly number[];
}

type Way = Omit<EnergySource, 'wh'>;
const wallDirect: Way = { origin: 'walls', words: 'Walls, into devices', colour: '--wall', look: solidBar };
const throughBanks: Way = {
  ...wallDirect,
  words: 'Walls, through banks',
  look: barLooks[1]!,
};
const panel: Way = { origin: 'panel', words: origins.panel.words, colour: '--panel', look: solidBar };
const hub: Way = { origin: 'hub', words: origins.hub.words, colour: '--hub', look: solidBar };
const start: Way = { origin: 'start', words: origins.start.words, colour: '--banks', look: solidBar };

/** Everything that is taken in, a mean day of the histories each; walls at the bottom of each bar. */
export function energyOfAll({ days }: ScenarioResult): DailyEnergy {
  const column = (of: (day: DayLedger) => number): readonly number[] => days.map(of);
  return {
    device: null,
    days,
    sources: [
      { ...wallDirect, wh: column(({ wall, wallToBanks }) => wall - wallToBanks) },
      { ...throughBanks, wh: column(({ wallToBanks }) => wallToBanks) },
      { ...panel, wh: column((day) => day.panel) },
      { ...hub, wh: column((day) => day.hub) },
    ],
    demandWh: column(({ demand }) => demand),
    unservedWh: column(({ unserved }) => unserved),
  };
}

/** What reaches one device, by where it was got; its own battery carries it over days that give less. */
export function energyOfOne({ days }: ScenarioResult, { name, ledger }: NamedDevice): DailyEnergy {
  const column = (of: (day: DeviceDay) => number): readonly number[] => ledger.days.map(of);
  return {
    device: name,
    days,
    sources: [
      { ...wallDirect, words: 'Walls, directly', wh: column((day) => day.wallDirect) },
      { ...throughBanks, wh: column(({ wallThroughBank }) => wallThroughBank) },
      { ...panel, wh: column((day) => day.panel) },
      { ...hub, wh: column((day) => day.hub) },
      { ...start, wh: column((day) => day.start) },
    ],
    demandWh: column(({ demand }) => demand),
    unservedWh: column(({ unserved }) => unserved),
  };
}

/** Those that give anything over the tour. */
export function givingSources({ sources }: DailyEnergy): readonly EnergySource[] {
  return sources.filter(({ wh }) => sumWh(wh) > 0);
}

export function sumWh(wh: readonly number[]): number {
  return wh.reduce((sum, each) => sum + each, 0);
}

export interface NamedDevice {
  readonly name: string;
  readonly ledger: DeviceLedger;
}

/** The devices by names that are told apart, though the rider has two of a kind. */
export function namedDevices(devices: readonly DeviceLedger[]): readonly NamedDevice[] {
  return devices.map((ledger, place) => {
    const before = devices.slice(0, place).filter(({ device }) => device === ledger.device).length;
    return { name: before === 0 ? ledger.device : `${ledger.device} (${before + 1})`, ledger };
  });
}
