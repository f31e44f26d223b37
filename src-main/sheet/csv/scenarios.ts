import type { Comparison, ScenarioResult, ScoredRow } from '../../../shared-types/comparison.ts';
import { toMajor, type Money } from '../../../shared-types/money.ts';
import type { Flow } from '../../../shared-types/flows.ts';
import { dailyMeanWh } from '../daily-mean.ts';
import { moneyText } from '../format.ts';
import type { SheetMatter, SheetStamp } from '../matter.ts';
import { dailyMinutes } from '../ride-lines.ts';
import {
  gramDecimals,
  minuteDecimals,
  rounded,
  shareDecimals,
  tidyTable,
  whDecimals,
  yesNo,
  type TidyCell,
  type TidyColumns,
  type TidyTable,
} from './tidy-table.ts';

interface Row {
  readonly scenario: ScenarioResult;
  readonly score: ScoredRow | undefined;
  readonly comparison: Comparison;
  readonly stamp: SheetStamp;
}

const percentDecimals = 2;
const percentPerShare = 100;

function meanOf(flow: Flow): (row: Row) => TidyCell {
  return ({ scenario }) => rounded(dailyMeanWh(scenario.days, flow), whDecimals);
}

function minutesOf(of: Parameters<typeof dailyMinutes>[1]): (row: Row) => TidyCell {
  return ({ scenario }) => rounded(dailyMinutes(scenario.legs, of), minuteDecimals);
}

/** Every column with its cell. `lowest_stored_wh` is that of the middle history; money is in major units of `currency`. */
const columns: TidyColumns<Row> = {
  scenario: ({ scenario }) => scenario.label,
  method: ({ scenario }) => scenario.method,
  rank: ({ score }) => score?.rank ?? null,
  score: ({ score }) => (score === undefined ? null : rounded(score.score, shareDecimals)),
  to_buy: ({ scenario }) => toMajor(scenario.cost.toBuy),
  whole_price: ({ scenario }) => toMajor(scenario.cost.whole),
  currency: ({ scenario }) => scenario.cost.toBuy.currency,
  not_converted: ({ scenario }) => apart(scenario.cost.notConverted),
  carried_g: ({ scenario }) => rounded(scenario.mass.carriedG, gramDecimals),
  front_wheel_g: ({ scenario }) => rounded(scenario.mass.frontWheelG, gramDecimals),
  energy_margin: ({ scenario }) => rounded(scenario.margin.value, shareDecimals),
  energy_margin_pct: ({ scenario }) => rounded(scenario.margin.value * percentPerShare, percentDecimals),
  margin_capped: ({ scenario }) => yesNo(scenario.margin.capped),
  margin_limited_by: ({ scenario }) => scenario.margin.limitedBy?.device ?? null,
  margin_limited_on_day: ({ scenario }) => scenario.margin.limitedBy?.day ?? null,
  first_short_device: ({ scenario }) => scenario.firstShort?.device ?? null,
  first_short_day: ({ scenario }) => scenario.firstShort?.day ?? null,
  flat_share: ({ scenario }) => rounded(scenario.risk.share, shareDecimals),
  lowest_stored_wh: ({ scenario }) => rounded(scenario.reserveWh.p50, whDecimals),
  demand_wh_per_day: ({ comparison }) => rounded(comparison.tour.demandWhPerDay, whDecimals),
  wall_wh_per_day: meanOf('wall'),
  panel_wh_per_day: meanOf('panel'),
  hub_wh_per_day: meanOf('hub'),
  lost_wh_per_day: meanOf('lost'),
  spilled_wh_per_day: meanOf('spilled'),
  unserved_wh_per_day: meanOf('unserved'),
  tour: ({ comparison }) => comparison.tour.label,
  start_date: ({ comparison }) => comparison.tour.startDate,
  days: ({ comparison }) => comparison.tour.days,
  histories: ({ comparison }) => comparison.histories,
  made_on: ({ stamp }) => stamp.madeOn,
  version: ({ stamp }) => stamp.version,
  later_min_per_day_grams: minutesOf('massMinutes'),
  later_min_per_day_hub: minutesOf('dragMinutes'),
  later_min_per_day_hub_off: minutesOf('offMinutes'),
  hub_set_price: ({ scenario }) => (scenario.hubCost === null ? null : toMajor(scenario.hubCost.total)),
  hub_set_g: ({ scenario }) => scenario.hubCost?.netG ?? null,
  seed: ({ comparison }) => comparison.seed,
  margin_confidence: ({ comparison }) => rounded(comparison.confidence, shareDecimals),
  usual_margin: ({ scenario }) => rounded(scenario.margin.usual, shareDecimals),
  usual_margin_capped: ({ scenario }) => yesNo(scenario.margin.usualCapped),
  flat_share_low: ({ scenario }) => rounded(scenario.risk.low, shareDecimals),
  flat_share_high: ({ scenario }) => rounded(scenario.risk.high, shareDecimals),
  first_short_earliest_day: ({ scenario }) => scenario.firstShort?.earliestDay ?? null,
  lowest_stored_p10_wh: ({ scenario }) => rounded(scenario.reserveWh.p10, whDecimals),
  lowest_stored_p90_wh: ({ scenario }) => rounded(scenario.reserveWh.p90, whDecimals),
  spilled_share: ({ scenario }) => rounded(scenario.spilledShare, shareDecimals),
  wheel_building: ({ scenario }) => toMajor(scenario.cost.building),
  per_tour_day: ({ scenario }) => toMajor(scenario.cost.perTourDay),
  resale: ({ scenario }) => toMajor(scenario.cost.resale),
  per_tour_day_not_converted: ({ scenario }) => apart(scenario.cost.apart.perTourDay),
  nights_that_need_a_wall: ({ scenario }) => scenario.cost.paidNights?.nights ?? null,
  minutes_lost_per_day: ({ scenario }) => rounded(scenario.values.minutesLost, minuteDecimals),
  days_without_wall: ({ scenario }) => rounded(scenario.values.daysWithoutWall, 0),
  left_out_because: ({ score }) => score?.excludedBy.map(({ text }) => text).join('; ') ?? null,
  dominated_by: ({ score, comparison }) =>
    comparison.scenarios.find(({ id }) => id === score?.dominatedBy)?.label ?? null,
  second_opinion_rank: ({ score }) => score?.topsis?.rank ?? null,
  second_opinion_closeness: ({ score }) =>
    score?.topsis === undefined || score.topsis === null
      ? null
      : rounded(score.topsis.closeness, shareDecimals),
  by_air: ({ scenario }) => scenario.air.verdict.text,
};

/** Adds amounts in other currencies as text: they are never converted. */
function apart(amounts: readonly Money[]): string {
  return amounts.map(moneyText).join('; ');
}

/** A line for each scenario, in order of rank. */
export function scenarioTable({ comparison, stamp }: SheetMatter): TidyTable {
  const rows = comparison.scenarios.map((scenario): Row => {
    const score = comparison.scores.find(({ id }) => id === scenario.id);
    return { scenario, score, comparison, stamp };
  });
  return tidyTable(columns, rows);
}
