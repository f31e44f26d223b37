import type { DayLedger, DeviceDay, DeviceLedger, StoredCourse } from '../../shared-types/comparison.ts';

/** What a method gives a day in the fixture tour, Wh at the plug. */
export interface SupplyFixture {
  readonly capacityWh: number;
  readonly wallWh: number;
  /** A wall every so many nights. */
  readonly wallEvery: number;
  readonly panelWh: number;
  readonly hubWh: number;
  /** Lost per Wh used, in banks and converters. */
  readonly lossShare: number;
}

export const fixtureStart = '2027-05-03';
export const fixtureDays = 24;
const hoursPerDay = 24;
const millisecondsPerDay = 86_400_000;

const demandWh = [29.4, 31.2, 30.1, 33] as const;
/** A bright day, a mixed one, a dull one, and so on; mean 1. */
const brightness = [1.3, 1.1, 0.5, 0.9, 1.4, 0.8] as const;

export const fixtureDemandWhPerDay = demandWh.reduce((sum, wh) => sum + wh, 0) / demandWh.length;

function dateOf(day: number): string {
  return new Date(Date.parse(fixtureStart) + (day - 1) * millisecondsPerDay).toISOString().slice(0, 10);
}

/** One day that starts with `beforeWh` stored; balanced: in = stored + used + lost + spilled. */
function dayLedger(supply: SupplyFixture, day: number, beforeWh: number): DayLedger {
  const wall = day % supply.wallEvery === 0 ? supply.wallWh : 0;
  const panel = supply.panelWh * brightness[day % brightness.length]!;
  const { hubWh: hub, lossShare, capacityWh } = supply;
  const income = wall + panel + hub;
  const demand = demandWh[day % demandWh.length]!;
  const used = Math.min(demand, (beforeWh + income) / (1 + lossShare));
  const lost = used * lossShare;
  const spilled = Math.max(0, beforeWh + income - used - lost - capacityWh);
  const stored = income - used - lost - spilled;
  const unserved = demand - used;
  const wallToBanks = wall - Math.min(wall, used);
  return {
    ...{ day, date: dateOf(day), demand, used, unserved },
    ...{ wall, wallToBanks, panel, hub, lost, spilled, stored },
  };
}

/** The ledger of the fixture tour, everything full at the start. */
export function ledgerFixture(supply: SupplyFixture): readonly DayLedger[] {
  const days: DayLedger[] = [];
  let storedWh = supply.capacityWh;
  for (let day = 1; day <= fixtureDays; day += 1) {
    const ledger = dayLedger(supply, day, storedWh);
    days.push(ledger);
    storedWh += ledger.stored;
  }
  return days;
}

/** What takes part of each day's use, by its share of it. */
const deviceShares = [
  { device: 'Phone', mustHave: true, share: 0.4 },
  { device: 'Navigation unit', mustHave: true, share: 0.3 },
  { device: 'Camera', mustHave: true, share: 0.2 },
  { device: 'Tablet', mustHave: false, share: 0.1 },
] as const;

/** Each device's part of a ledger: what walls do not give it a bank does, from whatever the tour filled the bank with. */
export function devicesFixture(capacityWh: number, days: readonly DayLedger[]): readonly DeviceLedger[] {
  const sum = (of: 'wallToBanks' | 'panel' | 'hub'): number => days.reduce((all, day) => all + day[of], 0);
  const filled = {
    wallThroughBank: sum('wallToBanks'),
    panel: sum('panel'),
    hub: sum('hub'),
    start: capacityWh,
  };
  const filledWh = Object.values(filled).reduce((all, wh) => all + wh, 0);
  const dayOf = (day: DayLedger, share: number): DeviceDay => {
    const wallDirect = (day.wall - day.wallToBanks) * share;
    const fromBankWh = day.used * share - wallDirect;
    const part = (of: keyof typeof filled): number => (fromBankWh * filled[of]) / filledWh;
    return {
      ...{ demand: day.demand * share, unserved: day.unserved * share, wallDirect },
      ...{
        wallThroughBank: part('wallThroughBank'),
        panel: part('panel'),
        hub: part('hub'),
        start: part('start'),
      },
    };
  };
  return deviceShares.map(({ device, mustHave, share }) => ({
    device,
    mustHave,
    days: days.map((day) => dayOf(day, share)),
  }));
}

/** How far the low and the high history lie from the middle one, as a share of all that can be stored. */
const bandShare = 0.15;

/** Hourly stored energy that follows a ledger in straight lines, with a band of even width inside what can be stored. */
export function courseFixture(capacityWh: number, days: readonly DayLedger[]): StoredCourse {
  let beforeWh = capacityWh;
  const middleWh = days.flatMap((day) => {
    const startWh = beforeWh;
    beforeWh += day.stored;
    return Array.from({ length: hoursPerDay }, (_, hour) =>
      Math.max(0, startWh + (day.stored * (hour + 1)) / hoursPerDay),
    );
  });
  const beside = (shift: number): readonly number[] =>
    middleWh.map((wh) => Math.min(capacityWh, Math.max(0, wh + shift * capacityWh)));
  return {
    ...{ capacityWh, pointsPerDay: hoursPerDay },
    ...{ lowWh: beside(-bandShare), middleWh, highWh: beside(bandShare) },
  };
}
