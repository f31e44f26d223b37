import type { SheetForm } from '../../shared-types/sheet.ts';
import { sheetContent } from './content/sheet-content.ts';
import { sheetCsv } from './csv/sheet-csv.ts';
import { comparisonJson } from './json.ts';
import { comparisonMarkdown } from './markdown.ts';
import type { SheetMatter } from './matter.ts';
import { comparisonPdf } from './pdf.ts';
import type { SheetFile } from './sheet-file.ts';
import { comparisonText } from './text.ts';

/** Media types registered with IANA; `text/markdown` by RFC 7763. */
const kinds: Readonly<Record<SheetForm['as'], { readonly extension: string; readonly mediaType: string }>> = {
  csv: { extension: 'csv', mediaType: 'text/csv; charset=utf-8' },
  json: { extension: 'json', mediaType: 'application/json' },
  markdown: { extension: 'md', mediaType: 'text/markdown; charset=utf-8' },
  pdf: { extension: 'pdf', mediaType: 'application/pdf' },
  text: { extension: 'txt', mediaType: 'text/plain; charset=utf-8' },
};

const encoder = new TextEncoder();

/** Writes the comparison in one format, ready to be saved or downloaded. */
export async function makeSheet(form: SheetForm, matter: SheetMatter): Promise<SheetFile> {
  const { extension, mediaType } = kinds[form.as];
  return {
    fileName: fileName(form, matter.comparison.tour.startDate, extension),
    mediaType,
    bytes: await bytesOf(form, matter),
  };
}

/** Named for the tour's start, not its label: a label may hold what a file system does not take. */
function fileName(form: SheetForm, startDate: string, extension: string): string {
  const what = form.as === 'csv' ? `comparison-${form.table}` : 'comparison';
  return `chargewright-${what}-${startDate.replace(/[^0-9-]/gu, '')}.${extension}`;
}

function bytesOf(form: SheetForm, matter: SheetMatter): Uint8Array | Promise<Uint8Array> {
  switch (form.as) {
    case 'pdf':
      return comparisonPdf(sheetContent(matter), matter.stamp, form.paper);
    case 'csv':
      return encoder.encode(sheetCsv(matter, form.table));
    case 'json':
      return encoder.encode(comparisonJson(matter));
    case 'markdown':
      return encoder.encode(comparisonMarkdown(sheetContent(matter)));
    case 'text':
      return encoder.encode(comparisonText(sheetContent(matter)));
  }
}
