import { addDays } from '../../../shared-types/dates.ts';
import type { Item } from '../../../shared-types/item.ts';
import type { Expected, LegSun, PanelSun, SunBy, SunPeriod } from '../../../shared-types/leg-sun.ts';
import type { Tour } from '../../../shared-types/tour.ts';

/** A band of a third to one and a half of the mean: round, so that a test can tell what belongs together. */
export function expected(mean: number): Expected {
  return { mean, band: { p10: mean / 3, p90: mean * 1.5 } };
}

export function sunPeriod(date: string, change: Partial<SunPeriod> = {}): SunPeriod {
  return {
    date,
    sun: { as: 'rises', riseH: 5.2, setH: 18.9 },
    radiationKWhM2: expected(5),
    minDegC: 8,
    maxDegC: 21,
    ...change,
  };
}

export function panelSun(itemId: string, label: string, means: readonly number[]): PanelSun {
  const usualDayWh = means[Math.floor(means.length / 2)] ?? 0;
  return {
    itemId,
    label,
    periods: means.map(expected),
    goodDayWh: usualDayWh * 1.5,
    usualDayWh,
    dullDayWh: usualDayWh / 3,
    dullWeekWh: usualDayWh / 2,
  };
}

/** The middle of each month of a year. */
export const monthDates: readonly string[] = Array.from(
  { length: 12 },
  (_, month) => `2027-${String(month + 1).padStart(2, '0')}-15`,
);

export function legSun(change: Partial<LegSun> = {}): LegSun {
  const dates = ['2027-05-03', '2027-05-04', '2027-05-05'];
  return {
    leg: 'First leg',
    station: {
      place: 'Riga',
      country: 'Latvia',
      km: 12.4,
      higherM: 212,
      source: 'A',
      temperaturesFrom: null,
    },
    periods: dates.map((date) => sunPeriod(date)),
    panels: [panelSun('demo-panel-20', '20 W panel', [28, 41, 35])],
    aimedOverFlat: 1.3,
    notes: [],
    histories: 200,
    ...change,
  };
}

/** A sun of the right shape whose figures follow the rated power of each panel; no model stands behind it. */
export function fakeLegSun(tour: Tour, leg: number, items: readonly Item[], by: SunBy): LegSun | null {
  const asked = tour.legs[leg];
  if (asked === undefined) return null;
  const before = tour.legs.slice(0, leg).reduce((sum, { days }) => sum + days, 0);
  const days = Array.from({ length: asked.days }, (_, day) => addDays(tour.startDate, before + day));
  const periods = (by === 'day' ? days : monthDates).map((date) => sunPeriod(date));
  const swing = (place: number): number => 1.4 + Math.sin(place / 3) * 0.6;
  const panels = items.flatMap((item) =>
    item.kind === 'panel' && item.state !== 'retired'
      ? [
          panelSun(
            item.id,
            item.label,
            periods.map((_, place) => item.ratedW * swing(place)),
          ),
        ]
      : [],
  );
  return legSun({ leg: asked.label, periods, panels });
}
