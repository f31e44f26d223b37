import { execFileSync, spawnSync } from 'node:child_process';

/**
 * Poppler's text reader, an independent one, is there in CI; elsewhere the tests that need it are left out. In CI a
 * missing reader must fail, so there the tests run all the same.
 */
export const canReadPdfText =
  process.env['CI'] !== undefined || spawnSync('pdftotext', ['-v']).error === undefined;

/** The text of all pages, laid out as on paper, runs of spaces made one. */
export function pdfText(bytes: Uint8Array): string {
  const text = execFileSync('pdftotext', ['-layout', '-enc', 'UTF-8', '-', '-'], { input: bytes });
  return text.toString('utf8').replace(/[ \u00a0]+/gu, ' ');
}

/** The words of all pages in the order they were drawn in, a cell after another, so that a sentence is whole wherever it was broken. */
export function pdfWords(bytes: Uint8Array): string {
  const text = execFileSync('pdftotext', ['-raw', '-enc', 'UTF-8', '-', '-'], { input: bytes });
  return text.toString('utf8').replace(/\s+/gu, ' ');
}

/** The file's objects as they stand; page and information objects are not compressed. */
export function pdfSource(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString('latin1');
}

export function pdfPageCount(bytes: Uint8Array): number {
  return pdfSource(bytes).match(/\/Type \/Page\b(?!s)/gu)?.length ?? 0;
}
