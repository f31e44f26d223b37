import type { DayLedger, ScenarioResult } from '../../../shared-types/comparison.ts';
import type { ChartTable } from '../../parts/charts/chart-table.ts';
import type { Drawing, Series } from '../../parts/charts/drawing.ts';
import type { LegendEntry } from '../../parts/charts/legend.ts';
import type { Palette } from '../../parts/charts/palette.ts';
import { dayMonth } from '../../../shared-types/dates.ts';
import { wattHours } from '../../../shared-types/figures.ts';
import { axisLooks } from '../../parts/charts/axis-looks.ts';
import { sourceWords, sumOfDays, type Source } from './findings.ts';

const sourceColours: Readonly<Record<Source, string>> = { wall: '--wall', panel: '--panel', hub: '--hub' };

/** Shown where a day leaves at least this much unserved, Wh. */
const leastMarkedWh = 0.05;

/** Sources the scenario takes anything from, walls at the bottom of each bar. */
function sourcesOf(days: readonly DayLedger[]): readonly Source[] {
  return (['wall', 'panel', 'hub'] as const).filter((source) => sumOfDays(days, source) > 0);
}

function anyUnserved(days: readonly DayLedger[]): boolean {
  return days.some((day) => day.unserved >= leastMarkedWh);
}

const noDash: readonly number[] = [];

export function ledgerLegend({ days }: ScenarioResult): readonly LegendEntry[] {
  const bars = sourcesOf(days).map((source): LegendEntry => ({
    label: sourceWords[source],
    colour: sourceColours[source],
    mark: 'bar',
    dash: noDash,
  }));
  const demand: LegendEntry = {
    label: 'What the devices ask for',
    colour: '--ink',
    mark: 'line',
    dash: noDash,
  };
  const short: LegendEntry = { label: 'Part of it not served', colour: '--bad', mark: 'point', dash: noDash };
  return [...bars, demand, ...(anyUnserved(days) ? [short] : [])];
}

export function ledgerTable({ days }: ScenarioResult): ChartTable {
  const columns = ['Day', 'Date', 'Walls', 'Panel', 'Hub', 'Asked for', 'Served', 'Not served'];
  const rest = ['Lost', 'Spilled', 'Change of stored'];
  return {
    columns: [...columns, ...rest].map((name, place) => (place < 2 ? name : `${name}, Wh`)),
    rows: days.map((day) => [
      `${day.day}`,
      day.date,
      ...[day.wall, day.panel, day.hub, day.demand, day.used, day.unserved],
      ...[day.lost, day.spilled, day.stored],
    ]),
  };
}

export function drawLedger({ days }: ScenarioResult, palette: Palette): Drawing {
  const axes = axisLooks(palette);
  return {
    type: 'bar',
    data: {
      labels: days.map(({ day }) => `${day}`),
      datasets: [
        demandLine(days, palette),
        ...(anyUnserved(days) ? [unservedMarks(days, palette)] : []),
        ...sourcesOf(days).map((source) => sourceBars(days, source, palette)),
      ],
    },
    options: {
      ...axes.options,
      scales: {
        x: { ...axes.x, stacked: true, title: { display: true, text: 'Day', color: palette('--soft') } },
        y: { ...axes.y, stacked: true, min: 0 },
      },
      plugins: {
        tooltip: {
          callbacks: {
            title: ([item]) => dayTitle(days[item?.dataIndex ?? 0]),
            label: ({ dataset, parsed }) => `${dataset.label ?? ''}: ${wattHours(parsed.y ?? Number.NaN)}`,
          },
        },
      },
    },
  };
}

function dayTitle(day: DayLedger | undefined): string {
  return day === undefined ? '' : `Day ${day.day}, ${dayMonth(day.date)}`;
}

function sourceBars(days: readonly DayLedger[], source: Source, palette: Palette): Series {
  return {
    type: 'bar',
    label: sourceWords[source],
    data: days.map((day) => day[source]),
    backgroundColor: palette(sourceColours[source]),
    stack: 'sources',
    categoryPercentage: 0.9,
    barPercentage: 0.85,
  };
}

/** A stack of its own each: lines in the bars' stack would be piled on top of them. */
function demandLine(days: readonly DayLedger[], palette: Palette): Series {
  return {
    type: 'line',
    label: 'Asked for',
    data: days.map((day) => day.demand),
    borderColor: palette('--ink'),
    backgroundColor: palette('--ink'),
    borderWidth: 1.5,
    pointRadius: 0,
    stack: 'demand',
  };
}

function unservedMarks(days: readonly DayLedger[], palette: Palette): Series {
  const colour = palette('--bad');
  return {
    type: 'line',
    label: 'Not served',
    data: days.map((day) => (day.unserved >= leastMarkedWh ? day.unserved : null)),
    borderColor: colour,
    backgroundColor: colour,
    showLine: false,
    pointStyle: 'triangle',
    pointRadius: 5,
    stack: 'unserved',
  };
}
