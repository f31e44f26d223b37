import type { DayLedger, LegYield, ScenarioResult } from '../../../shared-types/comparison.ts';
import { legEnergies, type LegEnergy } from '../../../shared-types/leg-energy.ts';
import { flows, type Flow } from '../../../shared-types/flows.ts';
import type { SheetMatter } from '../matter.ts';
import {
  minuteDecimals,
  rounded,
  shareDecimals,
  tidyTable,
  whDecimals,
  type TidyCell,
  type TidyColumns,
  type TidyTable,
} from './tidy-table.ts';

interface LegRow {
  readonly scenario: ScenarioResult;
  readonly place: number;
  readonly energy: LegEnergy;
  readonly leg: LegYield;
}

const legColumns: TidyColumns<LegRow> = {
  scenario: ({ scenario }) => scenario.label,
  leg_number: ({ place }) => place + 1,
  leg: ({ leg }) => leg.leg,
  days: ({ leg }) => leg.days,
  ...flowColumns(({ energy }: LegRow) => energy, '_wh_per_day'),
  flat_share: ({ leg }) => rounded(leg.risk.share, shareDecimals),
  flat_share_low: ({ leg }) => rounded(leg.risk.low, shareDecimals),
  flat_share_high: ({ leg }) => rounded(leg.risk.high, shareDecimals),
  nights_with_an_outlet: ({ leg }) => leg.wallNights,
  climate_station: ({ leg }) => leg.station,
  station_km: ({ leg }) => rounded(leg.stationKm, 0),
  station_higher_m: ({ leg }) => rounded(leg.stationHigherM, 0),
  radiation_kwh_per_m2_day: ({ leg }) => rounded(leg.radiationKWhM2, whDecimals),
  daylight_h: ({ leg }) => rounded(leg.dayLengthH, whDecimals),
  speed_kmh: ({ leg }) => rounded(leg.speedKmh, whDecimals),
  later_min_per_day_grams: ({ leg }) => rounded(leg.massMinutes, minuteDecimals),
  later_min_per_day_hub: ({ leg }) => rounded(leg.dragMinutes, minuteDecimals),
  later_min_per_day_hub_off: ({ leg }) => rounded(leg.offMinutes, minuteDecimals),
};

/** A line for each scenario and leg. */
export function legTable({ comparison }: SheetMatter): TidyTable {
  const rows = comparison.scenarios.flatMap((scenario) =>
    legEnergies(scenario).map((energy, place): LegRow => ({
      scenario,
      place,
      energy,
      leg: scenario.legs[place]!,
    })),
  );
  return tidyTable(legColumns, rows);
}

interface DayRow {
  readonly scenario: ScenarioResult;
  readonly day: DayLedger;
}

const dayColumns: TidyColumns<DayRow> = {
  scenario: ({ scenario }) => scenario.label,
  day: ({ day }) => day.day,
  date: ({ day }) => day.date,
  ...flowColumns(({ day }: DayRow) => day, '_wh'),
  wall_to_banks_wh: ({ day }) => rounded(day.wallToBanks, whDecimals),
  stored_change_wh: ({ day }) => rounded(day.stored, whDecimals),
};

/** A line for each scenario and day, the mean over the histories. */
export function dayTable({ comparison }: SheetMatter): TidyTable {
  const rows = comparison.scenarios.flatMap((scenario) =>
    scenario.days.map((day): DayRow => ({ scenario, day })),
  );
  return tidyTable(dayColumns, rows);
}

function flowColumns<Row>(of: (row: Row) => Readonly<Record<Flow, number>>, unit: string): TidyColumns<Row> {
  return Object.fromEntries(
    flows.map((flow) => [`${flow}${unit}`, (row: Row): TidyCell => rounded(of(row)[flow], whDecimals)]),
  );
}
