import { brokenLines, type Measure } from './broken-lines.ts';
import type { LegendEntry } from './legend.ts';

/* Lengths are in px from the top left of the picture; y of a text is its baseline. */

export interface PictureText {
  readonly title: string;
  readonly subtitle: string;
  readonly legend: readonly LegendEntry[];
}

export interface PlacedLine {
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

/** An entry of the legend: its mark at `x` beside the first line of its label, whose baseline is `y`. */
export interface PlacedEntry {
  readonly entry: LegendEntry;
  readonly x: number;
  readonly y: number;
  readonly label: readonly PlacedLine[];
}

/** What stands above the chart in its picture. */
export interface PictureHead {
  readonly title: readonly PlacedLine[];
  readonly subtitle: readonly PlacedLine[];
  readonly legend: readonly PlacedEntry[];
  readonly heightPx: number;
}

export const marginPx = 16;
export const keyWidthPx = 22;
const keyGapPx = 6;
const titleY = 28;
const titleLinePx = 22;
const smallLinePx = 16;
const legendRowPx = 20;
const subtitleGapPx = 20;
const legendGapPx = 24;
const belowPx = 12;

/** Lays title, subtitle and legend out over a chart of this width; what is long goes on in further lines. */
export function pictureHead(
  { title, subtitle, legend }: PictureText,
  widthPx: number,
  measure: { readonly title: Measure; readonly small: Measure },
): PictureHead {
  const titles = stacked(brokenLines(title, widthPx, measure.title), marginPx, titleY, titleLinePx);
  const subtitleY = endOf(titles) + subtitleGapPx;
  const subtitles = stacked(brokenLines(subtitle, widthPx, measure.small), marginPx, subtitleY, smallLinePx);
  const { entries, endY } = placedLegend(legend, endOf(subtitles) + legendGapPx, widthPx, measure.small);
  return { title: titles, subtitle: subtitles, legend: entries, heightPx: endY + belowPx };
}

function stacked(texts: readonly string[], x: number, y: number, linePx: number): readonly PlacedLine[] {
  return texts.map((text, line) => ({ text, x, y: y + line * linePx }));
}

function endOf(lines: readonly PlacedLine[]): number {
  return lines.at(-1)?.y ?? 0;
}

/** Entries side by side as far as they fit, and the baseline of the lowest. */
function placedLegend(legend: readonly LegendEntry[], firstY: number, widthPx: number, measure: Measure) {
  const entries: PlacedEntry[] = [];
  let x = marginPx;
  let y = firstY;
  let endY = firstY;
  for (const entry of legend) {
    const lines = brokenLines(entry.label, widthPx - keyWidthPx - keyGapPx, measure);
    const takenPx = keyWidthPx + keyGapPx + Math.max(...lines.map(measure));
    if (x > marginPx && x + takenPx > marginPx + widthPx) {
      x = marginPx;
      y = endY + legendRowPx;
    }
    const label = stacked(lines, x + keyWidthPx + keyGapPx, y, smallLinePx);
    entries.push({ entry, x, y, label });
    endY = Math.max(endY, endOf(label));
    x += takenPx + marginPx;
  }
  return { entries, endY };
}
