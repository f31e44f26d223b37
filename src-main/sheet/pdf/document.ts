import type { Content, TDocumentDefinitions } from 'pdfmake/interfaces';
import type { Comparison } from '../../../shared-types/comparison.ts';
import { countText, dateText, whText } from '../format.ts';
import { reserveReminder, type SheetStamp } from '../sheet-file.ts';
import { printable, sheetFont } from './fonts.ts';
import { assumptionList, cautionList, legNoteList } from './grounds.ts';
import { ledger } from './ledger.ts';
import { ink, leavesHeadingAlone, pageMargins, riderText, rule, size } from './look.ts';
import { packingLists } from './packing-list.ts';
import { scorecard } from './scorecard.ts';

const program = 'Chargewright';
const lineHeight = 1.12;

export function documentTitle({ tour }: Comparison): string {
  return `Comparison sheet: ${tour.label}`;
}

/** The tour in a line, then the answer first and its reason, as on screen. */
function opening(comparison: Comparison): Content[] {
  const { tour, histories, advice } = comparison;
  const use = `Use ${whText(tour.demandWhPerDay)} Wh a day; ${countText(histories, 'history', 'histories')}.`;
  return [
    riderText(documentTitle(comparison), { fontSize: size.title, bold: true }),
    riderText(`${tour.summary}. ${use}`, { color: ink.quiet, margin: [0, 1, 0, 7] }),
    riderText(advice.answer, { fontSize: size.answer, bold: true }),
    riderText(advice.why, { fontSize: size.title, margin: [0, 2, 0, 0] }),
    ...advice.notes.map((note) => riderText(note, { color: ink.quiet, margin: [0, 2, 0, 0] })),
  ];
}

function footLine(page: number, pages: number, { madeOn, version }: SheetStamp): Content {
  return {
    margin: [pageMargins[0], 10, pageMargins[2], 0],
    fontSize: size.small,
    stack: [
      rule(),
      {
        columns: [
          { text: reserveReminder, bold: true },
          {
            text: `${program} ${version}, made on ${dateText(madeOn)}, page ${page} of ${pages}`,
            alignment: 'right',
            color: ink.quiet,
          },
        ],
      },
    ],
  };
}

/** The whole sheet, what to decide and heed first and what it rests on last, as a description the PDF writer lays out; no clock, so the same input gives the same bytes. */
export function sheetDocument(comparison: Comparison, stamp: SheetStamp): TDocumentDefinitions {
  const content: Content = [
    ...opening(comparison),
    scorecard(comparison),
    ledger(comparison),
    packingLists(comparison),
    ...legNoteList(comparison),
    cautionList(comparison),
    assumptionList(comparison),
  ];
  return {
    pageSize: 'A4',
    pageMargins,
    // From 1.4 on the writer repeats the title in an XML stream without escaping it: `A & B` would not be well-formed.
    version: '1.3',
    language: 'en-GB',
    displayTitle: true,
    info: {
      title: printable(documentTitle(comparison)),
      creator: `${program} ${stamp.version}`,
      producer: program,
      creationDate: new Date(stamp.madeOn),
    },
    defaultStyle: { font: sheetFont, fontSize: size.body, lineHeight },
    content: printable(content),
    pageBreakBefore: leavesHeadingAlone,
    footer: (page, pages) => printable(footLine(page, pages, stamp)),
  };
}
