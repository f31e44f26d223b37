import { solidBar } from './bar-looks.ts';
import type { LegendEntry } from './legend.ts';
import type { Palette } from './palette.ts';

export interface PictureText {
  readonly title: string;
  readonly subtitle: string;
  readonly legend: readonly LegendEntry[];
}

const headHeightPx = 84;
const marginPx = 16;
const keyWidthPx = 22;
const keyPx = 10;
const fontFamily = "'Source Sans 3', system-ui, sans-serif";

/** The chart as a PNG that stands alone: with title, subtitle and legend, on the sheet's colour. */
export async function chartPicture(
  chart: HTMLCanvasElement,
  text: PictureText,
  palette: Palette,
): Promise<Blob | null> {
  const scale = chart.clientWidth === 0 ? 1 : chart.width / chart.clientWidth;
  const picture = document.createElement('canvas');
  picture.width = chart.width + 2 * marginPx * scale;
  picture.height = chart.height + (headHeightPx + marginPx) * scale;
  const pen = picture.getContext('2d');
  if (pen === null) return null;
  pen.fillStyle = palette('--sheet');
  pen.fillRect(0, 0, picture.width, picture.height);
  pen.drawImage(chart, marginPx * scale, headHeightPx * scale);
  pen.scale(scale, scale);
  writeHead(pen, text, palette);
  return new Promise((resolve) => picture.toBlob(resolve, 'image/png'));
}

function writeHead(pen: CanvasRenderingContext2D, text: PictureText, palette: Palette): void {
  pen.fillStyle = palette('--ink');
  pen.font = `600 17px ${fontFamily}`;
  pen.fillText(text.title, marginPx, 28);
  pen.fillStyle = palette('--soft');
  pen.font = `12px ${fontFamily}`;
  pen.fillText(text.subtitle, marginPx, 48);
  let left = marginPx;
  for (const entry of text.legend) left += writeEntry(pen, entry, left, palette);
}

/** Writes one entry and says how much room it took. */
function writeEntry(
  pen: CanvasRenderingContext2D,
  entry: LegendEntry,
  left: number,
  palette: Palette,
): number {
  const middle = 68;
  pen.strokeStyle = pen.fillStyle = palette(entry.colour);
  if (entry.mark === 'line') {
    pen.setLineDash([...entry.dash]);
    pen.lineWidth = 2;
    pen.beginPath();
    pen.moveTo(left, middle);
    pen.lineTo(left + keyWidthPx, middle);
    pen.stroke();
  } else {
    fillBar(pen, entry, left + keyWidthPx / 2 - keyPx / 2, middle - keyPx / 2);
  }
  pen.fillStyle = palette('--soft');
  pen.fillText(entry.label, left + keyWidthPx + 6, middle + 4);
  return keyWidthPx + 6 + pen.measureText(entry.label).width + marginPx;
}

function fillBar(pen: CanvasRenderingContext2D, { bar = solidBar }: LegendEntry, x: number, y: number): void {
  pen.globalAlpha = bar.fill;
  pen.fillRect(x, y, keyPx, keyPx);
  pen.globalAlpha = 1;
  pen.fillRect(x, y, keyPx, bar.topPx);
  pen.fillRect(x, y, bar.sidePx, keyPx);
  pen.fillRect(x + keyPx - bar.sidePx, y, bar.sidePx, keyPx);
}
