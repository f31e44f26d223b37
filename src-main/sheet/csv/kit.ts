import type { CheckedAirLine } from '../../../shared-types/air-check.ts';
import type { MassLine, ScenarioResult } from '../../../shared-types/comparison.ts';
import { toMajor } from '../../../shared-types/money.ts';
import type { BankLights, DaysSpan, LightRow } from '../../../shared-types/stop-rules.ts';
import type { SheetMatter } from '../matter.ts';
import {
  gramDecimals,
  rounded,
  tidyTable,
  whDecimals,
  yesNo,
  type TidyColumns,
  type TidyTable,
} from './tidy-table.ts';

interface Carried {
  readonly scenario: ScenarioResult;
  readonly line: MassLine;
}

function costOf({ scenario, line }: Carried) {
  return scenario.cost.lines.find(({ itemId }) => itemId === line.itemId);
}

const kitColumns: TidyColumns<Carried> = {
  scenario: ({ scenario }) => scenario.label,
  item: ({ line }) => line.label,
  kind: ({ line }) => line.kind,
  quantity: ({ line }) => line.quantity,
  mount: ({ line }) => line.mount,
  net_g: ({ line }) => rounded(line.netG, gramDecimals),
  front_wheel_g: ({ line }) => rounded(line.frontWheelG, gramDecimals),
  owned: (row) => {
    const cost = costOf(row);
    return cost === undefined ? null : yesNo(cost.owned);
  },
  whole_price: (row) => {
    const cost = costOf(row);
    return cost === undefined ? null : toMajor(cost.whole);
  },
  currency: (row) => costOf(row)?.whole.currency ?? null,
};

/** A line for each scenario and item that it carries. */
export function kitTable({ comparison }: SheetMatter): TidyTable {
  const rows = comparison.scenarios.flatMap((scenario) =>
    scenario.mass.lines.map((line): Carried => ({ scenario, line })),
  );
  return tidyTable(kitColumns, rows);
}

interface Lit {
  readonly scenario: ScenarioResult;
  readonly bank: BankLights;
  readonly row: LightRow;
}

const lightColumns: TidyColumns<Lit> = {
  scenario: ({ scenario }) => scenario.label,
  bank: ({ bank }) => bank.bank,
  pieces: ({ bank }) => bank.pieces,
  full_wh: ({ bank }) => rounded(bank.fullWh, whDecimals),
  lit: ({ row }) => row.lit,
  lights: ({ row }) => row.of,
  low_wh: ({ row }) => rounded(row.lowWh, whDecimals),
  high_wh: ({ row }) => rounded(row.highWh, whDecimals),
  low_days: ({ row }) => dayOf(row.alone, 'lowDays'),
  high_days: ({ row }) => dayOf(row.alone, 'highDays'),
  low_days_with_panel_and_hub: ({ row }) => dayOf(spanOf(row), 'lowDays'),
  high_days_with_panel_and_hub: ({ row }) => dayOf(spanOf(row), 'highDays'),
  panel_and_hub_carry_it: ({ row }) => yesNo(row.withSources?.as === 'sources'),
  must_have_wh_per_day: ({ scenario }) => rounded(scenario.stopRules.mustHaveWhPerDay, whDecimals),
  leg: ({ scenario }) => scenario.stopRules.leg,
};

function dayOf(span: DaysSpan | null, end: keyof DaysSpan) {
  return span === null ? null : rounded(span[end], whDecimals);
}

function spanOf({ withSources }: LightRow): DaysSpan | null {
  return withSources?.as === 'days' ? withSources : null;
}

/** A line for each scenario, bank and number of lights. */
export function lightTable({ comparison }: SheetMatter): TidyTable {
  const rows = comparison.scenarios.flatMap((scenario) =>
    scenario.stopRules.banks.flatMap((bank) => bank.rows.map((row): Lit => ({ scenario, bank, row }))),
  );
  return tidyTable(lightColumns, rows);
}

interface Flown {
  readonly scenario: ScenarioResult;
  readonly line: CheckedAirLine;
}

const airColumns: TidyColumns<Flown> = {
  scenario: ({ scenario }) => scenario.label,
  battery: ({ line }) => line.label,
  kind: ({ line }) => line.kind,
  count: ({ line }) => line.count,
  label_wh: ({ line }) => rounded(line.labelWh, whDecimals),
  class: ({ line }) => line.class,
  to_do: ({ line }) => line.toDo,
  scenario_verdict: ({ scenario }) => scenario.air.verdict.text,
};

/** A line for each scenario and sort of battery. */
export function airTable({ comparison }: SheetMatter): TidyTable {
  const rows = comparison.scenarios.flatMap((scenario) =>
    scenario.air.lines.map((line): Flown => ({ scenario, line })),
  );
  return tidyTable(airColumns, rows);
}
