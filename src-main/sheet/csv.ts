import papaparse from 'papaparse';
import { formulaStart } from '../../shared-types/formula-start.ts';
import type { Comparison, ScenarioResult, ScoredRow } from '../../shared-types/comparison.ts';
import { toMajor } from '../../shared-types/money.ts';
import { dailyMeanWh, type Flow } from './daily-mean.ts';
import { moneyText } from './format.ts';
import { dailyMinutes } from './ride-lines.ts';
import type { SheetStamp } from './sheet-file.ts';

interface Row {
  readonly scenario: ScenarioResult;
  readonly score: ScoredRow | undefined;
  readonly comparison: Comparison;
  readonly stamp: SheetStamp;
}
type Cell = string | number | null;

/**
 * RFC 4180 says nothing of encodings. Without this mark common spreadsheets take a file for the computer's old code page
 * and garble every ø and ł; whoever reads UTF-8 knows to skip it.
 */
const byteOrderMark = '\ufeff';

const shareDecimals = 4;
const whDecimals = 3;
const percentDecimals = 2;
const percentPerShare = 100;

function rounded(value: number, decimals: number): number {
  const factor = 10 ** decimals;
  return Math.round(value * factor) / factor;
}

function meanOf(flow: Flow): (row: Row) => Cell {
  return ({ scenario }) => rounded(dailyMeanWh(scenario.days, flow), whDecimals);
}

function yesNo(flag: boolean): Cell {
  return flag ? 'yes' : 'no';
}

const minuteDecimals = 2;

function minutesOf(of: Parameters<typeof dailyMinutes>[1]): (row: Row) => Cell {
  return ({ scenario }) => rounded(dailyMinutes(scenario.legs, of), minuteDecimals);
}

/**
 * Every column with its cell. Programs read the names: add at the end, never rename. `lowest_stored_wh` is that of the
 * middle history.
 */
const columns: Readonly<Record<string, (row: Row) => Cell>> = {
  scenario: ({ scenario }) => scenario.label,
  method: ({ scenario }) => scenario.method,
  rank: ({ score }) => score?.rank ?? null,
  score: ({ score }) => (score === undefined ? null : rounded(score.score, shareDecimals)),
  to_buy: ({ scenario }) => toMajor(scenario.cost.toBuy),
  whole_price: ({ scenario }) => toMajor(scenario.cost.whole),
  currency: ({ scenario }) => scenario.cost.toBuy.currency,
  not_converted: ({ scenario }) => scenario.cost.notConverted.map(moneyText).join('; '),
  carried_g: ({ scenario }) => scenario.mass.carriedG,
  front_wheel_g: ({ scenario }) => scenario.mass.frontWheelG,
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
};

/** One row per scenario by RFC 4180, the byte order mark first; numbers with a point and no thousands separator. */
export function comparisonCsv(comparison: Comparison, stamp: SheetStamp): string {
  const data = comparison.scenarios.map((scenario) => {
    const score = comparison.scores.find(({ id }) => id === scenario.id);
    return Object.values(columns).map((cellOf) => cellOf({ scenario, score, comparison, stamp }));
  });
  const table = papaparse.unparse(
    { fields: Object.keys(columns), data },
    { newline: '\r\n', escapeFormulae: formulaStart },
  );
  return `${byteOrderMark}${table}\r\n`;
}
