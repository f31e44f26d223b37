import { createRequire } from 'node:module';
import type { TFontDictionary } from 'pdfmake/interfaces';

export const sheetFont = 'Roboto';

/**
 * The font files that ship inside pdfmake, found the way Node finds the package itself: the same from the sources, from
 * the built bundle and from inside an asar archive, which Electron's file system reads like a folder.
 */
export function fontFiles(): TFontDictionary {
  const { resolve } = createRequire(import.meta.url);
  const file = (cut: string) => resolve(`pdfmake/fonts/Roboto/Roboto-${cut}.ttf`);
  return {
    [sheetFont]: {
      normal: file('Regular'),
      bold: file('Medium'),
      italics: file('Italic'),
      bolditalics: file('MediumItalic'),
    },
  };
}

/** The font has no narrow no-break space; every other sign the sheet itself uses is in it. */
function printableText(text: string): string {
  return text
    .normalize('NFC')
    .replaceAll('\u202f', '\u00a0')
    .replace(/\p{Cc}+/gu, ' ');
}

/** Makes every text of a content tree printable, wherever it stands; functions and numbers pass as they are. */
export function printable<T>(node: T): T {
  if (typeof node === 'string') return printableText(node) as T;
  if (Array.isArray(node)) return node.map((each: unknown) => printable(each)) as T;
  if (typeof node !== 'object' || node === null) return node;
  return Object.fromEntries(
    Object.entries(node).map(([key, value]) => [key, printable<unknown>(value)]),
  ) as T;
}
