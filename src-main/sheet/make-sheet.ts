import type { Comparison } from '../../shared-types/comparison.ts';
import { comparisonCsv } from './csv.ts';
import { comparisonPdf } from './pdf.ts';
import type { SheetFile, SheetFormat, SheetStamp } from './sheet-file.ts';
import { comparisonText } from './text.ts';

interface Maker {
  readonly extension: string;
  readonly mediaType: string;
  readonly bytes: (comparison: Comparison, stamp: SheetStamp) => Promise<Uint8Array>;
}

const encoder = new TextEncoder();

function textBytes(write: (comparison: Comparison, stamp: SheetStamp) => string): Maker['bytes'] {
  return (comparison, stamp) => Promise.resolve(encoder.encode(write(comparison, stamp)));
}

const makers: Readonly<Record<SheetFormat, Maker>> = {
  csv: { extension: 'csv', mediaType: 'text/csv; charset=utf-8', bytes: textBytes(comparisonCsv) },
  pdf: { extension: 'pdf', mediaType: 'application/pdf', bytes: comparisonPdf },
  text: { extension: 'txt', mediaType: 'text/plain; charset=utf-8', bytes: textBytes(comparisonText) },
};

/** Named for the tour's start, not its label: a label may hold what a file system does not take. */
function fileName(startDate: string, extension: string): string {
  return `chargewright-comparison-${startDate.replace(/[^0-9-]/gu, '')}.${extension}`;
}

/** Writes the comparison in one format, ready to be saved or downloaded. */
export async function makeSheet(
  format: SheetFormat,
  comparison: Comparison,
  stamp: SheetStamp,
): Promise<SheetFile> {
  const { extension, mediaType, bytes } = makers[format];
  return {
    fileName: fileName(comparison.tour.startDate, extension),
    mediaType,
    bytes: await bytes(comparison, stamp),
  };
}
