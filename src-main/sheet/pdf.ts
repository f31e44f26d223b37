import pdfmake from 'pdfmake';
import type { Comparison } from '../../shared-types/comparison.ts';
import { sheetDocument } from './pdf/document.ts';
import { fontFiles, sheetFont } from './pdf/fonts.ts';
import type { SheetStamp } from './sheet-file.ts';

/** Lets the PDF writer read its own font files and nothing else: no address, no other file. */
function confine(): void {
  const fonts = fontFiles();
  const allowed = new Set<unknown>(Object.values(fonts[sheetFont] ?? {}));
  pdfmake.setFonts(fonts);
  pdfmake.setUrlAccessPolicy(() => false);
  pdfmake.setLocalAccessPolicy((path) => allowed.has(path));
}

/** The comparison as A4 pages, two at most for six scenarios: what to decide, then what it rests on. */
export async function comparisonPdf(comparison: Comparison, stamp: SheetStamp): Promise<Uint8Array> {
  confine();
  const bytes = await pdfmake.createPdf(sheetDocument(comparison, stamp)).getBuffer();
  return new Uint8Array(bytes);
}
