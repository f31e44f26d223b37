import type { Content, TDocumentDefinitions } from 'pdfmake/interfaces';
import type { Paper } from '../../../shared-types/sheet.ts';
import type { SheetContent } from '../content/content.ts';
import { ink } from '../inks.ts';
import { program, type SheetStamp } from '../matter.ts';
import { sectionContent } from './blocks.ts';
import { printable, sheetFont } from './fonts.ts';
import { leavesHeadingAlone, lookOf, pageMargins, riderText, rule, type Look } from './look.ts';

const lineHeight = 1.1;
const pageSize = { a4: 'A4', letter: 'LETTER' } as const;

/** The tour in a line, then the answer first and its reason, as on screen. */
function opening({ title, tour, answer, why, notes }: SheetContent, { size }: Look): Content[] {
  return [
    riderText(title, { fontSize: size.title, bold: true }),
    riderText(tour, { color: ink.quiet, margin: [0, 1, 0, 6] }),
    riderText(answer, { fontSize: size.answer, bold: true }),
    riderText(why, { fontSize: size.title, margin: [0, 2, 0, 0] }),
    ...notes.map((note) => riderText(note, { color: ink.quiet, margin: [0, 2, 0, 0] })),
  ];
}

function footLine(
  page: number,
  pages: number,
  { reminder, made }: SheetContent,
  { widthPt, size }: Look,
): Content {
  return {
    margin: [pageMargins[0], 10, pageMargins[2], 0],
    fontSize: size.small,
    stack: [
      rule(widthPt),
      {
        columns: [
          { text: reminder, bold: true },
          { text: `${made}, page ${page} of ${pages}`, alignment: 'right', color: ink.quiet },
        ],
      },
    ],
  };
}

/** How a sheet is laid out. */
export interface Layout {
  readonly paper: Paper;
  /** Of the type, 1 as it is meant to be. */
  readonly scale: number;
  /** Told of the number of pages once they are laid out. */
  readonly onPages: (pages: number) => void;
}

/** The sheet as a description the PDF writer lays out. */
export function sheetDocument(
  sheet: SheetContent,
  { madeOn, version }: SheetStamp,
  { paper, scale, onPages }: Layout,
): TDocumentDefinitions {
  const look = lookOf(paper, scale);
  const content: Content = [
    ...opening(sheet, look),
    ...sheet.sections.map((section) => sectionContent(section, look)),
  ];
  return {
    pageSize: pageSize[paper],
    pageMargins,
    // From 1.4 on the writer repeats the title in an XML stream without escaping it: `A & B` would not be well-formed.
    version: '1.3',
    language: 'en-GB',
    displayTitle: true,
    info: {
      title: printable(sheet.title),
      creator: `${program} ${version}`,
      producer: program,
      creationDate: new Date(madeOn),
    },
    defaultStyle: { font: sheetFont, fontSize: look.size.body, lineHeight },
    content: printable(content),
    pageBreakBefore: leavesHeadingAlone,
    footer: (page, pages) => {
      onPages(pages);
      return printable(footLine(page, pages, sheet, look));
    },
  };
}
