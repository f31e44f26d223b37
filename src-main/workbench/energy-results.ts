import type {
  DayLedger,
  DeviceDay,
  DeviceLedger,
  EnergyMargin,
  FirstShort,
  FlatRisk,
  Shortfall,
  Spread,
  StoredCourse,
} from '../../shared-types/comparison.ts';
import { dayAccounts, deviceAccounts } from '../model/flow/record/accounts.ts';
import { meanOverTourWh } from '../model/flow/record/over-tour.ts';
import type { TourRecord } from '../model/flow/record/recorder.ts';
import { wilsonInterval } from '../model/flow/risk.ts';
import { middleOf, type Simulation } from '../model/flow/simulate.ts';
import type { Network } from '../model/flow/network.ts';
import { percentile } from '../model/percentile.ts';
import { isoDateOf, noonOf } from '../model/sun/calendar.ts';

/* What the walks of all histories left behind, in the words of the contract. */

const [low, middle, high] = [0.1, 0.5, 0.9] as const;

/** 10, 50 and 90 of 100. Sorts the values in place. */
function spreadOf(values: Float64Array | Float32Array): Spread {
  values.sort();
  return { p10: percentile(values, low), p50: percentile(values, middle), p90: percentile(values, high) };
}

/** When a device ran flat, as a person counts days. */
function shortfall(device: number, step: number, network: Network, stepsPerDay: number): Shortfall {
  return { device: network.devices[device]!.label, day: Math.floor(step / stepsPerDay) + 1 };
}

export function marginOf(
  { margin, usual, limit }: Simulation,
  network: Network,
  stepsPerDay: number,
): EnergyMargin {
  return {
    value: margin.value,
    capped: margin.capped,
    limitedBy: limit === null ? null : shortfall(limit.device, limit.step, network, stepsPerDay),
    usual: usual.value,
    usualCapped: usual.capped,
  };
}

export function riskOf({ flatStep, histories }: TourRecord): FlatRisk {
  return wilsonInterval(flatStep.filter((step) => step >= 0).length, histories);
}

/** How often a must-have is flat on some of these days, which count from 0. */
export function riskOnDays({ flatOnDay, histories }: TourRecord, days: readonly number[]): FlatRisk {
  const isFlat = (history: number): boolean => days.some((day) => flatOnDay[day * histories + history] === 1);
  const flat = Array.from({ length: histories }, (_, history) => history).filter(isFlat);
  return wilsonInterval(flat.length, histories);
}

/** The device that is most often the first, and its day in the middle of the histories in which one runs flat. */
export function firstShortOf(
  { flatStep, flatDevice }: TourRecord,
  network: Network,
  stepsPerDay: number,
): FirstShort | null {
  const flat = Array.from(flatStep.keys()).filter((history) => flatStep[history]! >= 0);
  if (flat.length === 0) return null;
  const steps = flat.map((history) => flatStep[history]!);
  const times = network.devices.map((_, device) => flat.filter((at) => flatDevice[at] === device).length);
  const device = times.indexOf(Math.max(...times));
  return {
    ...shortfall(device, middleOf(steps), network, stepsPerDay),
    earliestDay: Math.floor(Math.min(...steps) / stepsPerDay) + 1,
  };
}

export function reserveOf({ lowestWh }: TourRecord): Spread {
  return spreadOf(lowestWh.slice());
}

export function storedCourseOf(record: TourRecord, network: Network): StoredCourse {
  const { storedWh, histories, pointsPerDay } = record;
  const points = storedWh.length / histories;
  const spreads = Array.from({ length: points }, (_, point) =>
    spreadOf(storedWh.slice(point * histories, (point + 1) * histories)),
  );
  return {
    capacityWh: network.capacityWh.reduce((sum, wh) => sum + wh, 0),
    pointsPerDay,
    lowWh: spreads.map(({ p10 }) => inHundredths(p10)),
    middleWh: spreads.map(({ p50 }) => inHundredths(p50)),
    highWh: spreads.map(({ p90 }) => inHundredths(p90)),
  };
}

/** Thousands of figures travel to the screen: none needs more digits than this. */
function inHundredths(wh: number): number {
  return Math.round(wh * 100) / 100;
}

export function dayLedgersOf(record: TourRecord, startDate: string): readonly DayLedger[] {
  const count = record.days.length / dayAccounts.length;
  return Array.from({ length: count }, (_, day) => {
    const mean = rowOf(record, record.days, day, dayAccounts);
    const { wallDirect, wallToBanks, demand, unserved, ...rest } = mean;
    return {
      day: day + 1,
      date: isoDateOf(noonOf(startDate, day)),
      ...{ demand, unserved, wallToBanks, ...rest },
      used: demand - unserved,
      wall: wallDirect + wallToBanks,
    };
  });
}

export function deviceLedgersOf(record: TourRecord, network: Network): readonly DeviceLedger[] {
  const { deviceCount } = network;
  const days = record.devices.length / deviceAccounts.length / Math.max(1, deviceCount);
  return network.devices.map(({ label, mustHave }, device) => ({
    device: label,
    mustHave,
    days: Array.from({ length: days }, (_, day): DeviceDay =>
      rowOf(record, record.devices, day * deviceCount + device, deviceAccounts),
    ),
  }));
}

/** One row of sums by name, as means over the histories. */
function rowOf<K extends string>(
  { histories }: TourRecord,
  sums: Float64Array,
  row: number,
  names: readonly K[],
): Record<K, number> {
  const entries = names.map((name, at) => [name, sums[row * names.length + at]! / histories]);
  return Object.fromEntries(entries) as Record<K, number>;
}

/** Share of what panel and hub had to give that found no room; 0 without either. */
export function spilledShareOf(record: TourRecord): number {
  const given = meanOverTourWh(record, 'panel') + meanOverTourWh(record, 'hub');
  return given > 0 ? meanOverTourWh(record, 'spilled') / given : 0;
}
