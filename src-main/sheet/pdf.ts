import pdfmake from 'pdfmake';
import type { Paper } from '../../shared-types/sheet.ts';
import type { SheetContent } from './content/content.ts';
import type { SheetStamp } from './matter.ts';
import { sheetDocument } from './pdf/document.ts';
import { fontFiles, sheetFont } from './pdf/fonts.ts';

/** Lets the PDF writer read its own font files and nothing else: no address, no other file. */
function confine(): void {
  const fonts = fontFiles();
  const allowed = new Set<unknown>(Object.values(fonts[sheetFont] ?? {}));
  pdfmake.setFonts(fonts);
  pdfmake.setUrlAccessPolicy(() => false);
  pdfmake.setLocalAccessPolicy((path) => allowed.has(path));
}

/** A sheet to take along has no more pages than this, unless even the smallest type does not do it. */
const mostPages = 4;
/** Scales of the type that are tried, the one that reads best first. */
const scales = [1, 0.94, 0.88] as const;

/** The sheet as pages, two to four of them for up to six scenarios, with drawings that stay sharp and text that can be searched. */
export async function comparisonPdf(
  content: SheetContent,
  stamp: SheetStamp,
  paper: Paper,
): Promise<Uint8Array> {
  confine();
  const laidOut = async (scale: number): Promise<{ readonly bytes: Uint8Array; readonly pages: number }> => {
    let pages = 0;
    const layout = { paper, scale, onPages: (count: number) => void (pages = count) };
    const bytes = await pdfmake.createPdf(sheetDocument(content, stamp, layout)).getBuffer();
    return { bytes: new Uint8Array(bytes), pages };
  };
  const asMeant = await laidOut(scales[0]);
  if (asMeant.pages <= mostPages) return asMeant.bytes;
  for (const scale of scales.slice(1)) {
    const smaller = await laidOut(scale);
    if (smaller.pages <= mostPages) return smaller.bytes;
  }
  return asMeant.bytes;
}
