import type { DayLedger, StoredCourse } from '../../shared-types/comparison.ts';

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
  return { day, date: dateOf(day), demand, used, unserved, wall, panel, hub, lost, spilled, stored };
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

/** Hourly stored energy that follows a ledger in straight lines. */
export function courseFixture(capacityWh: number, days: readonly DayLedger[]): StoredCourse {
  let beforeWh = capacityWh;
  const middleWh = days.flatMap((day) => {
    const startWh = beforeWh;
    beforeWh += day.stored;
    return Array.from(
      { length: hoursPerDay },
      (_, hour) => startWh + (day.stored * (hour + 1)) / hoursPerDay,
    );
  });
  return { capacityWh, middleWh, lowWh: null, highWh: null };
}
