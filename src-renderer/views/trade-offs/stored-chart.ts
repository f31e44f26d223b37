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

/** Beyond this a line of every step is a solid patch; the lowest of each day is drawn instead. */
const longestByStepDays = 45;

function byStep(days: number): boolean {
  return days <= longestByStepDays;
}

export function storedLegend({ scenarios }: Comparison): readonly LegendEntry[] {
  const looks = looksOf(scenarios.map(({ method }) => method));
  return scenarios.map(({ label }, i) => ({ label, mark: 'line', ...looks[i]! }));
}

export function storedSubtitle({ tour }: Comparison): string {
  const lowest = byStep(tour.days) ? '' : ', lowest of each day';
  return `All banks and devices together, Wh. Line: middle history${lowest}. Band: 10 to 90 of 100 histories.`;
}

const courses = [
  { words: 'low', of: 'lowWh' },
  { words: 'middle', of: 'middleWh' },
  { words: 'high', of: 'highWh' },
] as const;

/** The lowest of each day, per scenario in its low, middle and high course. */
export function storedTable({ tour, scenarios }: Comparison): ChartTable {
  const heads = scenarios.flatMap(({ label }) =>
    courses.map(({ words }) => `${label}, lowest stored, ${words}, Wh`),
  );
  const rows = Array.from({ length: tour.days }, (_, day) => [
    `${day + 1}`,
    addDays(tour.startDate, day),
    ...scenarios.flatMap(({ stored }) =>
      courses.map(({ of }) => lowestOfDay(stored[of], stored.pointsPerDay, day)),
    ),
  ]);
  return { columns: ['Day', 'Date', ...heads], rows };
}

function lowestOfDay(course: readonly number[], pointsPerDay: number, day: number): number {
  const points = course.slice(day * pointsPerDay, (day + 1) * pointsPerDay);
  return points.length === 0 ? Number.NaN : Math.min(...points);
}

export function drawStored({ tour, scenarios }: Comparison, palette: Palette): Drawing {
  const looks = looksOf(scenarios.map(({ method }) => method));
  const axes = axisLooks(palette);
  const daysPerLabel = Math.max(1, Math.ceil(tour.days / mostDateLabels));
  return {
    type: 'line',
    data: {
      datasets: scenarios.flatMap((scenario, i) => linesOf(scenario, tour.days, looks[i]!, palette)),
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

/** The points drawn of a course: at the end of each step, or on a long tour the lowest of each day, at its noon. */
function pointsOf(course: readonly number[], pointsPerDay: number, days: number): readonly Point[] {
  if (byStep(days)) return course.map((y, i) => ({ x: ((i + 1) * hoursPerDay) / pointsPerDay, y }));
  return Array.from({ length: days }, (_, day) => ({
    x: (day + 0.5) * hoursPerDay,
    y: lowestOfDay(course, pointsPerDay, day),
  }));
}

/** The line of a scenario over the two edges of its band, the upper one filled down to the lower. */
function linesOf({ label, stored }: ScenarioResult, days: number, look: Look, palette: Palette): Series[] {
  const colour = palette(look.colour);
  const drawn = (of: (typeof courses)[number]['of']) =>
    curve(pointsOf(stored[of], stored.pointsPerDay, days), colour);
  const fill = { target: '-1', above: faded(colour, bandShare), below: faded(colour, bandShare) };
  return [
    { ...drawn('lowWh'), borderWidth: 0 },
    { ...drawn('highWh'), borderWidth: 0, fill },
    { ...drawn('middleWh'), label, borderWidth: 2, borderDash: [...look.dash] },
  ];
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
