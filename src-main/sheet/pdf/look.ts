import type { Content, ContentText, CustomTableLayout, Node, NodeQueries } from 'pdfmake/interfaces';
import type { Paper } from '../../../shared-types/sheet.ts';
import { ink } from '../inks.ts';

/** Lengths and type sizes of the sheet are in points, 1/72 inch. */
export const pageMargins: [left: number, top: number, right: number, bottom: number] = [36, 26, 36, 34];

/** Width of the papers: A4 by ISO 216, 210 mm; US Letter by ANSI/ASME Y14.1, 8.5 inches. */
const paperWidthPt: Readonly<Record<Paper, number>> = { a4: 595.28, letter: 612 };

function textWidthPt(paper: Paper): number {
  return paperWidthPt[paper] - pageMargins[0] - pageMargins[2];
}

/** Sizes of type. What is read in a tent is no smaller than it must be. */
const sizes = {
  answer: 15,
  title: 10,
  heading: 9.5,
  figure: 10,
  body: 8.5,
  reading: 7.5,
  small: 7,
  reference: 6.5,
} as const;
export type Sizes = Readonly<Record<keyof typeof sizes, number>>;

/** All that blocks are laid out by: how wide they may be, and how large their type is. */
export interface Look {
  readonly widthPt: number;
  readonly size: Sizes;
}

/** The look of a paper. @param scale of the type, 1 as it is meant to be */
export function lookOf(paper: Paper, scale: number): Look {
  const entries = Object.entries(sizes).map(([name, pt]) => [name, pt * scale]);
  return { widthPt: textWidthPt(paper), size: Object.fromEntries(entries) as Sizes };
}

const hairlinePt = 0.5;
export const cellGapPt = 3.5;
export const barWidthPt = 3;
/** Share of the page height above a heading. */
const lowestHeadingRatio = 0.94;
export const breakableHeading = 1;

/** No line and no room above and below: a coloured bar beside text, in the first column where there is one. */
export function bare(bars: boolean): CustomTableLayout {
  return {
    hLineWidth: () => 0,
    vLineWidth: () => 0,
    paddingLeft: (column) => (column === 0 ? 0 : cellGapPt),
    paddingRight: (column, { table }) =>
      (bars && column === 0) || column === (table.widths?.length ?? 0) - 1 ? 0 : cellGapPt,
    paddingTop: () => 0,
    paddingBottom: () => 0,
  };
}

/** Hairlines between rows, `rowPaddingPt` above and below each. */
export function hairlines(bars: boolean, rowPaddingPt: number): CustomTableLayout {
  return {
    ...bare(bars),
    hLineWidth: () => hairlinePt,
    hLineColor: () => ink.hairline,
    paddingTop: () => rowPaddingPt,
    paddingBottom: () => rowPaddingPt,
  };
}

/** A hairline under the head only. */
export function headLine(bars: boolean, rowPaddingPt: number): CustomTableLayout {
  return {
    ...hairlines(bars, rowPaddingPt),
    hLineWidth: (line, { table }) => (line === (table.headerRows ?? 0) ? hairlinePt : 0),
  };
}

/** The longest word that is sure to fit, in letters. */
export const longestWord = { inLine: 40, inCell: 22 } as const;

/** Text that is a string and nothing nested. */
export type RiderText = ContentText & { readonly text: string };

/** The rider's own words: may be long, may hold no space. A word longer than a line is broken anywhere; other text only between words. */
export function riderText(
  text: string,
  style: Partial<Omit<ContentText, 'text'>> = {},
  longest: number = longestWord.inLine,
): RiderText {
  const long = text.split(/\s/u).some((word) => word.length > longest);
  return { text, wordBreak: long ? 'break-all' : 'normal', ...style };
}

/** A hairline across the page. */
export function rule(widthPt: number): Content {
  const ends = { x1: 0, y1: 0, x2: widthPt, y2: 0 };
  return {
    canvas: [{ type: 'line', ...ends, lineWidth: hairlinePt, lineColor: ink.hairline }],
    margin: [0, 0, 0, 4],
  };
}

/** Moves a heading to the next page when nothing, or next to nothing, of its section would follow it on its own. */
export function leavesHeadingAlone(
  { headlineLevel, startPosition }: Node,
  { getFollowingNodesOnPage }: Pick<NodeQueries, 'getFollowingNodesOnPage'>,
): boolean {
  if (headlineLevel !== breakableHeading) return false;
  return startPosition.verticalRatio > lowestHeadingRatio || getFollowingNodesOnPage().length === 0;
}
