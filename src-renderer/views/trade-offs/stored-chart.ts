import type { Comparison, ScenarioResult } from '../../../shared-types/comparison.ts';
import type { ChartTable } from '../../parts/charts/chart-table.ts';
import type { Drawing, Point, Series } from '../../parts/charts/drawing.ts';
import type { LegendEntry } from '../../parts/charts/legend.ts';
import { faded, type Palette } from '../../parts/charts/palette.ts';
import { looksOf, type Look } from '../../parts/marks/looks.ts';
import { addDays, dayMonth } from '../../../shared-types/dates.ts';
import { wattHours } from '../../../shared-types/figures.ts';
import { axisLooks } from '../../parts/charts/axis-looks.ts';

const hoursPerDay = 24;
const mostDateLabels = 8;
const bandShare = 0.22;

/** Beyond this an hourly line is a solid patch; the lowest of each day is drawn instead. */
const longestHourlyDays = 45;

function isHourly(days: number): boolean {
  return days <= longestHourlyDays;
}

export function storedLegend({ scenarios }: Comparison): readonly LegendEntry[] {
  const looks = looksOf(scenarios.map(({ method }) => method));
  return scenarios.map(({ label }, i) => ({ label, mark: 'line', ...looks[i]! }));
}

export function storedSubtitle({ tour, histories, scenarios }: Comparison): string {
  const banded = scenarios.some(({ stored }) => stored.lowWh !== null);
  const line = histories > 1 ? 'middle history' : 'mean history';
  const band = banded ? ' Band: 10 to 90 of 100.' : '';
  return `All banks and devices together, Wh. Line: ${line}${isHourly(tour.days) ? '' : ', lowest of each day'}.${band}`;
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

export function drawStored({ tour, scenarios }: Comparison, palette: Palette): Drawing {
  const looks = looksOf(scenarios.map(({ method }) => method));
  const axes = axisLooks(palette);
  const daysPerLabel = Math.max(1, Math.ceil(tour.days / mostDateLabels));
  return {
    type: 'line',
    data: {
      datasets: scenarios.flatMap((scenario, i) => linesOf(drawn(scenario, tour.days), looks[i]!, palette)),
    },
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
}

function hourTitle(startDate: string, hour: number): string {
  const day = Math.floor(hour / hoursPerDay);
  return `${dayMonth(addDays(startDate, day))}, ${Math.floor(hour % hoursPerDay)} h`;
}

interface Drawn {
  readonly label: string;
  readonly middle: readonly Point[];
  readonly low: readonly Point[];
  readonly high: readonly Point[];
}

/** The points drawn for a scenario: each hour, or on a long tour the lowest of each day, at its noon. */
function drawn({ label, stored }: ScenarioResult, days: number): Drawn {
  const points = (hourly: readonly number[] | null): readonly Point[] => {
    if (hourly === null) return [];
    if (isHourly(days)) return hourly.map((y, x) => ({ x, y }));
    return Array.from({ length: days }, (_, day) => ({
      x: (day + 0.5) * hoursPerDay,
      y: lowestOfDay(hourly, day),
    }));
  };
  return {
    label,
    middle: points(stored.middleWh),
    low: points(stored.lowWh),
    high: points(stored.highWh),
  };
}

/** The line of a scenario, and where there is a band its two edges, the upper one filled down to the lower. */
function linesOf({ label, middle, low, high }: Drawn, look: Look, palette: Palette): Series[] {
  const colour = palette(look.colour);
  const line = { ...curve(middle, colour), label, borderWidth: 2, borderDash: [...look.dash] };
  if (low.length === 0 || high.length === 0) return [line];
  const fill = { target: '-1', above: faded(colour, bandShare), below: faded(colour, bandShare) };
  return [{ ...curve(low, colour), borderWidth: 0 }, { ...curve(high, colour), borderWidth: 0, fill }, line];
}

function curve(points: readonly Point[], colour: string) {
  return {
    type: 'line' as const,
    data: [...points],
    parsing: false as const,
    normalized: true,
    pointRadius: 0,
    borderColor: colour,
    backgroundColor: colour,
  };
}
