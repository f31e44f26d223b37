import type { DayLedger } from '../../../shared-types/comparison.ts';
import type { ChartTable } from '../../parts/charts/chart-table.ts';
import type { DailyEnergy } from './daily-energy.ts';

type Column = readonly [words: string, wh: readonly number[]];

/** The figures behind the chart: for all devices with where the energy goes, so that each day can be balanced. */
export function ledgerTable(energy: DailyEnergy): ChartTable {
  const { days, sources, demandWh, unservedWh } = energy;
  const column = (of: (day: DayLedger) => number): readonly number[] => days.map(of);
  const rest: readonly Column[] = [
    ['Lost', column(({ lost }) => lost)],
    ['Spilled', column(({ spilled }) => spilled)],
    ['Change of stored', column(({ stored }) => stored)],
  ];
  const columns: readonly Column[] = [
    ...sources.map(({ words, wh }): Column => [words, wh]),
    ['Asked for', demandWh],
    ['Served', demandWh.map((wh, day) => wh - unservedWh[day]!)],
    ['Not served', unservedWh],
    ...(energy.device === null ? rest : []),
  ];
  return {
    columns: ['Day', 'Date', ...columns.map(([words]) => `${words}, Wh`)],
    rows: days.map(({ day, date }, i) => [`${day}`, date, ...columns.map(([, wh]) => wh[i]!)]),
  };
}
