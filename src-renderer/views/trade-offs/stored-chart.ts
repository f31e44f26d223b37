import type { ChartConfiguration, ChartDataset } from 'chart.js';
import type { Comparison, ScenarioResult } from '../../../shared-types/comparison.ts';
import type { ChartTable } from '../../parts/charts/chart-table.ts';
import type { LegendEntry } from '../../parts/charts/legend.ts';
import { faded, type Palette } from '../../parts/charts/palette.ts';
import { looksOf, type Look } from '../../parts/marks/looks.ts';
import { addDays, dayMonth } from '../../parts/text/calendar.ts';
import { wattHours } from '../../parts/text/format.ts';
import { axisLooks } from './axis-looks.ts';

const hoursPerDay = 24;
const mostDateLabels = 8;
const bandShare = 0.22;

type LineSet = ChartDataset<'line', { x: number; y: number }[]>;

export function storedLegend({ scenarios }: Comparison): readonly LegendEntry[] {
  const looks = looksOf(scenarios.map(({ method }) => method));
  return scenarios.map(({ label }, i) => ({ label, mark: 'line', ...looks[i]! }));
}

export function storedSubtitle({ histories, scenarios }: Comparison): string {
  const banded = scenarios.some(({ stored }) => stored.lowWh !== null);
  const line = histories > 1 ? 'middle history' : 'mean history';
  return `All banks and devices together, Wh. Line: ${line}.${banded ? ' Band: 10 to 90 of 100.' : ''}`;
}

/** The lowest of each day, per scenario. */
export function storedTable({ tour, scenarios }: Comparison): ChartTable {
  const rows = Array.from({ length: tour.days }, (_, day) => [
    `${day + 1}`,
    addDays(tour.startDate, day),
    ...scenarios.map(({ stored }) => lowestOfDay(stored.middleWh, day)),
  ]);
  return {
    columns: ['Day', 'Date', ...scenarios.map(({ label }) => `${label}, lowest stored, Wh`)],
    rows,
  };
}

function lowestOfDay(hourly: readonly number[], day: number): number {
  const hours = hourly.slice(day * hoursPerDay, (day + 1) * hoursPerDay);
  return hours.length === 0 ? Number.NaN : Math.min(...hours);
}

export function drawStored({ tour, scenarios }: Comparison, palette: Palette): ChartConfiguration {
  const looks = looksOf(scenarios.map(({ method }) => method));
  const axes = axisLooks(palette);
  const daysPerLabel = Math.max(1, Math.ceil(tour.days / mostDateLabels));
  const config: ChartConfiguration<'line', { x: number; y: number }[]> = {
    type: 'line',
    data: { datasets: scenarios.flatMap((scenario, i) => linesOf(scenario, looks[i]!, palette)) },
    options: {
      ...axes.options,
      scales: {
        x: {
          ...axes.x,
          type: 'linear',
          min: 0,
          max: tour.days * hoursPerDay,
          ticks: {
            ...axes.x.ticks,
            stepSize: daysPerLabel * hoursPerDay,
            callback: (hour) => dayMonth(addDays(tour.startDate, Number(hour) / hoursPerDay)),
          },
        },
        y: { ...axes.y, min: 0 },
      },
      plugins: {
        tooltip: {
          filter: ({ dataset }) => dataset.label !== undefined,
          callbacks: {
            title: ([item]) => hourTitle(tour.startDate, item?.parsed.x ?? 0),
            label: ({ dataset, parsed }) => `${dataset.label ?? ''}: ${wattHours(parsed.y ?? Number.NaN)}`,
          },
        },
      },
    },
  };
  return config;
}

function hourTitle(startDate: string, hour: number): string {
  const day = Math.floor(hour / hoursPerDay);
  return `${dayMonth(addDays(startDate, day))}, ${hour % hoursPerDay} h`;
}

/** The line of a scenario, and where there is a band its two edges, the upper one filled down to the lower. */
function linesOf({ label, stored }: ScenarioResult, look: Look, palette: Palette): LineSet[] {
  const colour = palette(look.colour);
  const line = { ...curve(stored.middleWh, colour), label, borderWidth: 2, borderDash: [...look.dash] };
  if (stored.lowWh === null || stored.highWh === null) return [line];
  const fill = { target: '-1', above: faded(colour, bandShare), below: faded(colour, bandShare) };
  return [
    { ...curve(stored.lowWh, colour), borderWidth: 0 },
    { ...curve(stored.highWh, colour), borderWidth: 0, fill },
    line,
  ];
}

function curve(hourly: readonly number[], colour: string): LineSet {
  return {
    data: hourly.map((y, x) => ({ x, y })),
    parsing: false,
    normalized: true,
    pointRadius: 0,
    borderColor: colour,
    backgroundColor: colour,
  };
}
