import { dayMonth } from '../../../shared-types/dates.ts';
import { estimateLevel, type ItemEstimate, type ReadingCell } from '../../../shared-types/field-log.ts';
import { percent } from '../../../shared-types/figures.ts';
import { axisLooks } from '../../parts/charts/axis-looks.ts';
import type { Drawing, Series } from '../../parts/charts/drawing.ts';
import type { Figure } from '../../parts/charts/figure.ts';
import type { LegendEntry } from '../../parts/charts/legend.ts';
import { faded, type Palette } from '../../parts/charts/palette.ts';
import { estimateFinding, rangeOfValues, valueText } from './estimate-words.ts';

const barColour = '--wall';
const estimateColour = '--accent';
const bandShare = 0.16;
const estimateDash = [6, 4] as const;
const readingLabel = 'One reading: from its lower to its upper bound';
const estimateLabel = 'Estimate';
/** A meter's reading is a sliver; it is drawn at least so high, as a share of the axis. */
const leastBar = 0.012;
/** Room above the highest, as a share of it. */
const headroom = 1.1;

/** The readings of a value with its estimate and interval; null where no reading bounds it by itself. */
export function estimateFigure(found: ItemEstimate, label: string, locale?: string): Figure | null {
  if (found.cells.length === 0) return null;
  const subtitle = `${label}: ${found.name}, ${unitText(found)}, by reading; bars reach from the lower to the upper bound of a reading`;
  return {
    title: figureFinding(found, label, locale),
    subtitle:
      found.estimate === null
        ? `${subtitle}.`
        : `${subtitle}, the band is the interval of the estimate at a level of ${percent(estimateLevel, { locale })}.`,
    fileName: `readings-${found.measure}`,
    legend: legendOf(found),
    table: () => ({
      columns: ['Date', `Lower bound, ${unitText(found)}`, `Upper bound, ${unitText(found)}`],
      rows: [
        ...found.cells.map(({ on, low, high }): (string | number)[] => [
          on,
          bound(found, low),
          bound(found, high),
        ]),
        ...estimateRows(found),
      ],
    }),
    draw: (palette) => drawEstimate(found, palette, locale),
  };
}

/** The card around it names the item and the value. */
function figureFinding(found: ItemEstimate, label: string, locale?: string): string {
  const { estimate, unit } = found;
  if (estimate === null) return estimateFinding(found, label, locale);
  return `Estimate ${valueText(estimate.value, unit, locale)}, interval ${rangeOfValues(estimate.low, estimate.high, unit, locale)}`;
}

function unitText({ unit }: ItemEstimate): string {
  return unit === 'share' ? '%' : unit;
}

function scaled({ unit }: ItemEstimate, value: number): number {
  return unit === 'share' ? value * 100 : value;
}

function bound(found: ItemEstimate, value: number | null): number | string {
  return value === null ? 'none' : scaled(found, value);
}

function estimateRows(found: ItemEstimate): (string | number)[][] {
  const { estimate } = found;
  if (estimate === null) return [];
  return [
    ['Interval of the estimate', scaled(found, estimate.low), scaled(found, estimate.high)],
    ['Estimate', scaled(found, estimate.value), scaled(found, estimate.value)],
  ];
}

function legendOf({ estimate, catalogue }: ItemEstimate): readonly LegendEntry[] {
  return [
    { label: readingLabel, colour: barColour, mark: 'bar', dash: [] },
    ...(estimate === null
      ? []
      : ([{ label: estimateLabel, colour: estimateColour, mark: 'line', dash: [...estimateDash] }] as const)),
    ...(catalogue === null
      ? []
      : ([{ label: catalogue.words, colour: '--ink', mark: 'line', dash: [] }] as const)),
  ];
}

/** Highest that the axis goes: all bounds that there are, and the lines. */
function topOf(found: ItemEstimate): number {
  const { cells, estimate, catalogue } = found;
  const bounds = cells.flatMap(({ low, high }) => [low, high]).filter((value) => value !== null);
  const lines = [estimate?.high, catalogue?.value].filter((value) => value !== undefined);
  return roundTop(Math.max(...bounds, ...lines) * headroom);
}

/** The next even figure above: so that the axis ends at a tick. */
function roundTop(value: number): number {
  const step = 10 ** Math.floor(Math.log10(value)) / 2;
  return Math.ceil(value / step) * step;
}

function drawEstimate(found: ItemEstimate, palette: Palette, locale?: string): Drawing {
  const axes = axisLooks(palette);
  const top = topOf(found);
  return {
    type: 'bar',
    data: {
      labels: found.cells.map(({ on }) => dayMonth(on, locale)),
      datasets: [...estimateLines(found, palette), readingBars(found, palette, top)],
    },
    options: {
      ...axes.options,
      scales: {
        x: axes.x,
        y: {
          ...axes.y,
          min: 0,
          max: top,
          title: { display: true, text: unitText(found), color: palette('--soft') },
        },
      },
      plugins: {
        tooltip: {
          filter: ({ dataset }) => dataset.label === readingLabel,
          callbacks: { label: ({ dataIndex }) => cellText(found, found.cells[dataIndex]!, locale) },
        },
      },
    },
  };
}

function cellText({ unit }: ItemEstimate, { low, high }: ReadingCell, locale?: string): string {
  if (high === null) return low === null ? 'no bound' : `at least ${valueText(low, unit, locale)}`;
  return low === null ? `at most ${valueText(high, unit, locale)}` : rangeOfValues(low, high, unit, locale);
}

/** A bound that is missing is drawn to the edge of the axis. */
function readingBars(found: ItemEstimate, palette: Palette, top: number): Series {
  const spans = found.cells.map(({ low, high }): [number, number] => {
    const [from, to] = [low ?? 0, high ?? top];
    const short = Math.max(0, top * leastBar - (to - from)) / 2;
    return [from - short, to + short];
  });
  return {
    type: 'bar',
    label: readingLabel,
    data: spans as unknown as number[],
    backgroundColor: palette(barColour),
    maxBarThickness: 28,
  };
}

function estimateLines(found: ItemEstimate, palette: Palette): Series[] {
  const { estimate, catalogue, cells } = found;
  const level = (label: string, value: number, look: Partial<Series>): Series =>
    ({
      type: 'line',
      label,
      data: cells.map(() => value),
      pointRadius: cells.length === 1 ? 4 : 0,
      borderWidth: 2,
      ...look,
    }) as Series;
  const colour = palette(estimateColour);
  const band = faded(colour, bandShare);
  return [
    ...(estimate === null
      ? []
      : [
          level('Interval, upper end', estimate.high, {
            borderWidth: 0,
            backgroundColor: band,
            fill: '+1',
          }),
          level('Interval, lower end', estimate.low, { borderWidth: 0, borderColor: band }),
          level(estimateLabel, estimate.value, {
            borderColor: colour,
            borderDash: [...estimateDash],
          }),
        ]),
    ...(catalogue === null
      ? []
      : [level(catalogue.words, catalogue.value, { borderColor: palette('--ink') })]),
  ];
}
