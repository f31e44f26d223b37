import { describe, expect, it } from 'vitest';
import type { SheetForm } from '../../../shared-types/sheet.ts';
import { sheetContent } from '../../../src-main/sheet/content/sheet-content.ts';
import { sheetCsv } from '../../../src-main/sheet/csv/sheet-csv.ts';
import { comparisonJson } from '../../../src-main/sheet/json.ts';
import { makeSheet } from '../../../src-main/sheet/make-sheet.ts';
import { comparisonMarkdown } from '../../../src-main/sheet/markdown.ts';
import { comparisonText } from '../../../src-main/sheet/text.ts';
import { comparisonFixture } from '../../support/comparison-fixture.ts';
import { matterFixture, matterOf } from '../../support/sheet-matter.ts';

const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });

describe('makeSheet', () => {
  it('keeps a path out of the file name', async () => {
    const { tour } = comparisonFixture();
    const escaping = matterOf({ tour: { ...tour, startDate: '../2027-05-03/\u0000' } });
    const { fileName } = await makeSheet({ as: 'text' }, escaping);
    expect(fileName).toBe('chargewright-comparison-2027-05-03.txt');
  });

  // Registered with IANA: text/csv (RFC 4180), application/json (RFC 8259), text/markdown (RFC 7763), application/pdf
  // (RFC 8118), text/plain (RFC 2046).
  it.each<[SheetForm, string, string]>([
    [{ as: 'csv', table: 'scenarios' }, 'comparison-scenarios-2027-05-03.csv', 'text/csv; charset=utf-8'],
    [{ as: 'csv', table: 'legs' }, 'comparison-legs-2027-05-03.csv', 'text/csv; charset=utf-8'],
    [{ as: 'json' }, 'comparison-2027-05-03.json', 'application/json'],
    [{ as: 'markdown' }, 'comparison-2027-05-03.md', 'text/markdown; charset=utf-8'],
    [{ as: 'text' }, 'comparison-2027-05-03.txt', 'text/plain; charset=utf-8'],
  ])('names %o for what it holds and the tour start', async (form, name, type) => {
    const { fileName, mediaType } = await makeSheet(form, matterFixture());
    expect(fileName).toBe(`chargewright-${name}`);
    expect(mediaType).toBe(type);
  });

  it('encodes the text formats as UTF-8 without loss', async () => {
    const matter = matterFixture();
    const content = sheetContent(matter);
    const text = async (form: SheetForm) => decoder.decode((await makeSheet(form, matter)).bytes);
    expect(await text({ as: 'csv', table: 'kit' })).toBe(sheetCsv(matter, 'kit'));
    expect(await text({ as: 'json' })).toBe(comparisonJson(matter));
    expect(await text({ as: 'markdown' })).toBe(comparisonMarkdown(content));
    expect(await text({ as: 'text' })).toBe(comparisonText(content));
  });

  it('names a PDF sheet likewise, and begins it with the PDF signature', async () => {
    const { bytes, ...file } = await makeSheet({ as: 'pdf', paper: 'a4' }, matterFixture());
    expect(file).toEqual({
      fileName: 'chargewright-comparison-2027-05-03.pdf',
      mediaType: 'application/pdf',
    });
    expect(decoder.decode(bytes.slice(0, 5))).toBe('%PDF-');
  });
});
