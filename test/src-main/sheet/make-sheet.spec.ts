import { describe, expect, it } from 'vitest';
import { comparisonCsv } from '../../../src-main/sheet/csv.ts';
import { makeSheet } from '../../../src-main/sheet/make-sheet.ts';
import { comparisonText } from '../../../src-main/sheet/text.ts';
import { comparisonFixture } from '../../support/comparison-fixture.ts';

const stamp = { madeOn: '2027-04-18', version: '0.1.0' };
const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });

describe('makeSheet', () => {
  it('keeps a path out of the file name', async () => {
    const { tour } = comparisonFixture();
    const escaping = comparisonFixture({ tour: { ...tour, startDate: '../2027-05-03/\u0000' } });
    const { fileName } = await makeSheet('text', escaping, stamp);
    expect(fileName).toBe('chargewright-comparison-2027-05-03.txt');
  });

  // Media types registered with IANA: text/csv (RFC 4180), application/pdf (RFC 8118), text/plain (RFC 2046).
  it.each([
    ['csv', 'csv', 'text/csv; charset=utf-8'],
    ['pdf', 'pdf', 'application/pdf'],
    ['text', 'txt', 'text/plain; charset=utf-8'],
  ] as const)('names a %s sheet for the tour start', async (format, extension, mediaType) => {
    const sheet = await makeSheet(format, comparisonFixture(), stamp);
    expect(sheet.fileName).toBe(`chargewright-comparison-2027-05-03.${extension}`);
    expect(sheet.mediaType).toBe(mediaType);
  });

  it('encodes the text formats as UTF-8 without loss', async () => {
    const comparison = comparisonFixture();
    const csv = await makeSheet('csv', comparison, stamp);
    const text = await makeSheet('text', comparison, stamp);
    expect(decoder.decode(csv.bytes)).toBe(comparisonCsv(comparison, stamp));
    expect(decoder.decode(text.bytes)).toBe(comparisonText(comparison, stamp));
  });

  it('begins a PDF sheet with the PDF signature', async () => {
    const { bytes } = await makeSheet('pdf', comparisonFixture(), stamp);
    expect(decoder.decode(bytes.slice(0, 5))).toBe('%PDF-');
  });
});
