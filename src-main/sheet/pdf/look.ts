import type { Content, ContentText, CustomTableLayout, Node, TableCell } from 'pdfmake/interfaces';
import type { Method } from '../../../shared-types/scenario.ts';

/** Lengths and type sizes of the sheet are in points, 1/72 inch. */
export const pageMargins: [left: number, top: number, right: number, bottom: number] = [40, 28, 40, 40];
/** A4 less the margins. */
export const textWidthPt = 515;
export const size = {
  answer: 15,
  title: 10,
  body: 9,
  figure: 10,
  small: 7.5,
  caution: 7,
  fine: 6.5,
} as const;

/** Paper is white and ink black in print; the warm tones are left to the hairlines. */
export const ink = { quiet: '#4d4a45', hairline: '#a8a297', accent: '#8f4a16', failing: '#a3201a' } as const;

/** Okabe & Ito's colour-blind-safe set, the amber darkened for paper; the same on screen and in print. */
export const methodColour: Readonly<Record<Method, string>> = {
  banks: '#0072b2',
  panel: '#d08a00',
  hub: '#009e73',
  mix: '#cc79a7',
};

const hairlinePt = 0.5;
const cellGapPt = 5;
const barWidthPt = 3;
const longestUnbrokenWord = 22;
const breakableHeading = 1;
/** Share of the page height above a heading. */
const lowestHeadingRatio = 0.9;

/** The first column of a table with bars; its cells are `bar(...)`. */
export const barColumnWidthPt = barWidthPt;

export function bar(colour: string): TableCell {
  return { text: '', fillColor: colour };
}

/** Hairlines between rows only; `rowPaddingPt` above and below each. */
export function hairlines(rowPaddingPt: number): CustomTableLayout {
  return {
    hLineWidth: () => hairlinePt,
    vLineWidth: () => 0,
    hLineColor: () => ink.hairline,
    paddingLeft: (column) => (column === 0 ? 0 : cellGapPt),
    paddingRight: (column, { table }) =>
      column === 0 || column === (table.widths?.length ?? 0) - 1 ? 0 : cellGapPt,
    paddingTop: () => rowPaddingPt,
    paddingBottom: () => rowPaddingPt,
  };
}

/** No line at all: a coloured bar beside text. */
export const bare: CustomTableLayout = { ...hairlines(0), hLineWidth: () => 0 };

/** Rows as close as the lines of a paragraph. */
export const compact: CustomTableLayout = { ...hairlines(0.5), hLineWidth: () => 0 };

/** A word as long as a column, a file name for example, is broken anywhere; other text only between words. */
export function breaking(text: string): { readonly wordBreak: 'normal' | 'break-all' } {
  const long = text.split(/\s/u).some((word) => word.length > longestUnbrokenWord);
  return { wordBreak: long ? 'break-all' : 'normal' };
}

/** The rider's own words: may be long, may hold no space. */
export function riderText(text: string, style: Partial<ContentText> = {}): ContentText {
  return { text, ...breaking(text), ...style };
}

export function small(text: string): ContentText {
  return riderText(text, { fontSize: size.small, color: ink.quiet });
}

export function columnHead(text: string, alignment: 'left' | 'right' = 'right'): TableCell {
  return { text, fontSize: size.small, color: ink.quiet, bold: true, alignment, verticalAlignment: 'bottom' };
}

/** A hairline across the page. */
export function rule(): Content {
  const ends = { x1: 0, y1: 0, x2: textWidthPt, y2: 0 };
  return {
    canvas: [{ type: 'line', ...ends, lineWidth: hairlinePt, lineColor: ink.hairline }],
    margin: [0, 0, 0, 4],
  };
}

/**
 * A section under its heading. One marked `short` is not torn between pages; the PDF writer would drop a kept block that
 * is taller than a page, so whatever may grow with the rider's kit is short only up to a safe number of lines.
 */
export function section(heading: string, body: Content, short: boolean): Content {
  const head: Content = { text: heading, bold: true, fontSize: size.body, margin: [0, 0, 0, 3] };
  const stack = [short ? head : { ...head, headlineLevel: breakableHeading }, body];
  return { unbreakable: short, margin: [0, 9, 0, 0], stack };
}

/** Moves the heading of a section that may be torn to the next page when little of its body would follow it. */
export function leavesHeadingAlone({ headlineLevel, startPosition }: Node): boolean {
  return headlineLevel === breakableHeading && startPosition.verticalRatio > lowestHeadingRatio;
}
