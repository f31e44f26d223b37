/* The few marks of SVG 1.1 that the sheet draws with; lengths are points. */

export interface Stroke {
  readonly colour: string;
  readonly widthPt: number;
  /** Lengths of dash and gap; solid without. */
  readonly dash?: readonly number[];
}

export interface TextLook {
  readonly sizePt: number;
  readonly colour: string;
  readonly anchor?: 'start' | 'middle' | 'end';
}

const decimals = 2;

/** Hundredths of a point are finer than any printer. */
function at(value: number): string {
  return String(Number(value.toFixed(decimals)));
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

export function svg(widthPt: number, heightPt: number, marks: readonly string[]): string {
  const size = `width="${at(widthPt)}" height="${at(heightPt)}" viewBox="0 0 ${at(widthPt)} ${at(heightPt)}"`;
  return `<svg xmlns="http://www.w3.org/2000/svg" ${size}>${marks.join('')}</svg>`;
}

export function line(x1: number, y1: number, x2: number, y2: number, stroke: Stroke): string {
  return `<line x1="${at(x1)}" y1="${at(y1)}" x2="${at(x2)}" y2="${at(y2)}" ${strokeText(stroke)}/>`;
}

export function bar(x: number, y: number, width: number, height: number, fill: string, opacity = 1): string {
  return `<rect x="${at(x)}" y="${at(y)}" width="${at(width)}" height="${at(height)}" fill="${fill}" fill-opacity="${opacity}"/>`;
}

export function frame(x: number, y: number, width: number, height: number, stroke: Stroke): string {
  return `<rect x="${at(x)}" y="${at(y)}" width="${at(width)}" height="${at(height)}" fill="none" ${strokeText(stroke)}/>`;
}

export type Point = readonly [x: number, y: number];

export function course(points: readonly Point[], stroke: Stroke): string {
  return `<path d="${pathText(points)}" fill="none" stroke-linejoin="round" ${strokeText(stroke)}/>`;
}

export function area(points: readonly Point[], fill: string, opacity = 1): string {
  return `<path d="${pathText(points)} Z" fill="${fill}" fill-opacity="${opacity}"/>`;
}

export function disc(x: number, y: number, radius: number, fill: string): string {
  return `<circle cx="${at(x)}" cy="${at(y)}" r="${at(radius)}" fill="${fill}"/>`;
}

export function text(x: number, y: number, words: string, look: TextLook): string {
  const { sizePt, colour, anchor = 'start' } = look;
  return `<text x="${at(x)}" y="${at(y)}" font-size="${at(sizePt)}" fill="${colour}" text-anchor="${anchor}">${escaped(words)}</text>`;
}

function strokeText({ colour, widthPt, dash = [] }: Stroke): string {
  const dashes = dash.length === 0 ? '' : ` stroke-dasharray="${dash.map(at).join(' ')}"`;
  return `stroke="${colour}" stroke-width="${at(widthPt)}"${dashes}`;
}

function pathText(points: readonly Point[]): string {
  return points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${at(x)} ${at(y)}`).join(' ');
}
