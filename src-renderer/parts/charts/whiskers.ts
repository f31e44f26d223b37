import type { Chart, ChartType, Plugin } from 'chart.js';
import type { Band } from '../../../shared-types/comparison.ts';

const widestPx = 1.5;
const finestPx = 0.6;
const longestCapPx = 8;
/** Where bars are narrower a cap is a blot; the line alone says enough. */
const capFromBarPx = 5;

/** The stroke of one whisker: its line is never wider than a part of its bar, so that the bar stays seen behind it. */
export interface WhiskerStroke {
  readonly linePx: number;
  /** Length of the caps at both ends; 0 for none. */
  readonly capPx: number;
}

const lineToBar = 0.4;
const capToBar = 0.6;

export function whiskerStroke(barPx: number): WhiskerStroke {
  return {
    linePx: Math.max(finestPx, Math.min(widestPx, barPx * lineToBar)),
    capPx: barPx < capFromBarPx ? 0 : Math.min(longestCapPx, barPx * capToBar),
  };
}

/** A line over each bar from the low to the high end of its band; `bands` by series, then by bar. */
export function whiskers<T extends ChartType>(
  bands: readonly (readonly Band[])[],
  colour: string,
): Plugin<T> {
  return {
    id: 'whiskers',
    afterDatasetsDraw(chart) {
      bands.forEach((ofSeries, series) => drawSeries(chart as unknown as Chart, series, ofSeries, colour));
    },
  };
}

function drawSeries(chart: Chart, series: number, bands: readonly Band[], colour: string): void {
  const { data: bars, yAxisID } = chart.getDatasetMeta(series);
  const axis = chart.scales[yAxisID ?? 'y'];
  const [first] = bars;
  if (axis === undefined || first === undefined) return;
  const { linePx, capPx } = whiskerStroke(widthOf(first));
  const pen = chart.ctx;
  pen.save();
  pen.strokeStyle = colour;
  pen.lineWidth = linePx;
  pen.beginPath();
  bars.forEach(({ x }, place) => {
    const band = bands[place];
    if (band === undefined) return;
    trace(pen, x, axis.getPixelForValue(band.p10), axis.getPixelForValue(band.p90), capPx);
  });
  pen.stroke();
  pen.restore();
}

function widthOf(bar: object): number {
  return 'width' in bar && typeof bar.width === 'number' ? bar.width : 0;
}

function trace(pen: CanvasRenderingContext2D, x: number, low: number, high: number, capPx: number): void {
  pen.moveTo(x, low);
  pen.lineTo(x, high);
  if (capPx === 0) return;
  for (const end of [low, high]) {
    pen.moveTo(x - capPx / 2, end);
    pen.lineTo(x + capPx / 2, end);
  }
}
