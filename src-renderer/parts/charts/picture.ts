import { solidBar } from './bar-looks.ts';
import type { Measure } from './broken-lines.ts';
import type { LegendEntry } from './legend.ts';
import type { Palette } from './palette.ts';
import {
  keyWidthPx,
  marginPx,
  pictureHead,
  type PictureHead,
  type PictureText,
  type PlacedEntry,
  type PlacedLine,
} from './picture-head.ts';

const keyPx = 10;
/** The middle of a mark lies this much above the baseline of its label, px. */
const keyRisePx = 4;
const fontFamily = "'Source Sans 3', system-ui, sans-serif";
const titleFont = `600 17px ${fontFamily}`;
const smallFont = `12px ${fontFamily}`;

/**
 * The chart as a PNG that stands alone: with title, subtitle and legend, on the sheet's colour.
 *
 * @param widthPx of the chart as it stands on the page
 */
export async function chartPicture(
  chart: HTMLCanvasElement,
  text: PictureText,
  palette: Palette,
  widthPx = chart.clientWidth,
): Promise<Blob | null> {
  const scale = widthPx === 0 ? 1 : chart.width / widthPx;
  const picture = document.createElement('canvas');
  const pen = picture.getContext('2d');
  if (pen === null) return null;
  const measure = { title: measureIn(pen, titleFont), small: measureIn(pen, smallFont) };
  const head = pictureHead(text, chart.width / scale, measure);
  // A canvas forgets its font and scale when it is resized.
  picture.width = chart.width + 2 * marginPx * scale;
  picture.height = chart.height + (head.heightPx + marginPx) * scale;
  pen.fillStyle = palette('--sheet');
  pen.fillRect(0, 0, picture.width, picture.height);
  pen.drawImage(chart, marginPx * scale, head.heightPx * scale);
  pen.scale(scale, scale);
  writeHead(pen, head, palette);
  return new Promise((resolve) => picture.toBlob(resolve, 'image/png'));
}

function measureIn(pen: CanvasRenderingContext2D, font: string): Measure {
  return (text) => {
    pen.font = font;
    return pen.measureText(text).width;
  };
}

function writeHead(pen: CanvasRenderingContext2D, head: PictureHead, palette: Palette): void {
  pen.fillStyle = palette('--ink');
  pen.font = titleFont;
  write(pen, head.title);
  pen.fillStyle = palette('--soft');
  pen.font = smallFont;
  write(pen, head.subtitle);
  for (const placed of head.legend) writeEntry(pen, placed, palette);
}

function write(pen: CanvasRenderingContext2D, lines: readonly PlacedLine[]): void {
  for (const { text, x, y } of lines) pen.fillText(text, x, y);
}

function writeEntry(
  pen: CanvasRenderingContext2D,
  { entry, x, y, label }: PlacedEntry,
  palette: Palette,
): void {
  const middle = y - keyRisePx;
  pen.strokeStyle = pen.fillStyle = palette(entry.colour);
  if (entry.mark === 'line') {
    pen.setLineDash([...entry.dash]);
    pen.lineWidth = 2;
    pen.beginPath();
    pen.moveTo(x, middle);
    pen.lineTo(x + keyWidthPx, middle);
    pen.stroke();
  } else {
    fillBar(pen, entry, x + keyWidthPx / 2 - keyPx / 2, middle - keyPx / 2);
  }
  pen.fillStyle = palette('--soft');
  write(pen, label);
}

function fillBar(pen: CanvasRenderingContext2D, { bar = solidBar }: LegendEntry, x: number, y: number): void {
  pen.globalAlpha = bar.fill;
  pen.fillRect(x, y, keyPx, keyPx);
  pen.globalAlpha = 1;
  pen.fillRect(x, y, keyPx, bar.topPx);
  pen.fillRect(x, y, bar.sidePx, keyPx);
  pen.fillRect(x + keyPx - bar.sidePx, y, bar.sidePx, keyPx);
}
