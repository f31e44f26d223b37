import { addDays } from '../../../shared-types/dates.ts';
import type { Item } from '../../../shared-types/item.ts';
import type { LegHub, LegRide, Pace } from '../../../shared-types/leg-ride.ts';
import type { Scenario } from '../../../shared-types/scenario.ts';
import type { Tour } from '../../../shared-types/tour.ts';

const hoursADay = 6;
const minutesAnHour = 60;

/** Later by this many minutes than 18 km/h without the kit; round, so that a test can tell what belongs together. */
export function pace(laterMinADay: number): Pace {
  const kmADay = 18 * hoursADay;
  return { speedKmh: kmADay / (hoursADay + laterMinADay / minutesAnHour), kmADay, laterMinADay };
}

export function legHub(change: Partial<LegHub> = {}): LegHub {
  return {
    label: '3 W generator hub wheel',
    converter: 'Hub to USB converter',
    meanWhADay: 14,
    daysWh: { p10: 11, p50: 14, p90: 17 },
    meanW: 14 / hoursADay,
    startSpeedKmh: 10,
    aboveStartShare: 0.85,
    curve: [5, 10, 15, 20, 30].map((speedKmh) => ({
      speedKmh,
      plugW: speedKmh < 10 ? 0 : speedKmh / 6,
      onW: 2 + speedKmh / 3,
      offW: speedKmh / 20,
    })),
    shortDays: 1,
    ...change,
  };
}

export function legRide(change: Partial<LegRide> = {}): LegRide {
  return {
    leg: 'First leg',
    scenario: 'Generator hub',
    ridingHours: hoursADay,
    kitG: 1065,
    bare: pace(0),
    loaded: pace(2),
    off: pace(4),
    on: pace(10),
    hub: legHub(),
    power: {
      riderW: 100,
      airW: 52,
      rollingW: 30,
      slopeW: 6,
      hubW: 4,
      frictionW: 5,
      brakesW: 3,
    },
    needWhADay: 25.5,
    days: ['2027-05-03', '2027-05-04', '2027-05-05'].map((date, place) => ({
      date,
      km: 100 + place,
      speedKmh: 17,
      hubWh: [11, 14, 17][place]!,
    })),
    speeds: [
      { fromKmh: 0, toKmh: 10, share: 0.15 },
      { fromKmh: 10, toKmh: 25, share: 0.8 },
      { fromKmh: 25, toKmh: 50, share: 0.05 },
    ],
    grades: [
      { gradePct: -4, share: 0.2 },
      { gradePct: 0, share: 0.6 },
      { gradePct: 4, share: 0.2 },
    ],
    pushingShare: 0,
    brakingShare: 0.02,
    notes: [],
    ...change,
  };
}

/** A ride of the right shape, with a hub where the scenario carries one; no model stands behind it. */
export function fakeLegRide(
  tour: Tour,
  leg: number,
  scenario: Scenario,
  items: readonly Item[],
): LegRide | null {
  const asked = tour.legs[leg];
  if (asked === undefined) return null;
  const carried = items.filter(({ id }) => scenario.kit.some(({ itemId }) => itemId === id));
  const hub = carried.find(({ kind }) => kind === 'generator-hub');
  const before = tour.legs.slice(0, leg).reduce((sum, { days }) => sum + days, 0);
  const days = Array.from({ length: asked.days }, (_, day) => ({
    date: addDays(tour.startDate, before + day),
    km: 100,
    speedKmh: 17,
    hubWh: hub === undefined ? 0 : 14,
  }));
  const ride = legRide({ leg: asked.label, scenario: scenario.label, ridingHours: asked.ridingHours, days });
  if (hub === undefined) return { ...ride, hub: null, off: null, on: null };
  return { ...ride, hub: legHub({ label: hub.label }) };
}
