import pdfmake from 'pdfmake';
import { describe, expect, it } from 'vitest';
import type { Assumption, Comparison } from '../../../shared-types/comparison.ts';
import type { Method } from '../../../shared-types/scenario.ts';
import type { Paper } from '../../../shared-types/sheet.ts';
import { sheetContent } from '../../../src-main/sheet/content/sheet-content.ts';
import type { SheetMatter } from '../../../src-main/sheet/matter.ts';
import { comparisonPdf } from '../../../src-main/sheet/pdf.ts';
import { comparisonFixture, scenarioFixture } from '../../support/comparison-fixture.ts';
import { canReadPdfText, pdfPageCount, pdfSource, pdfText, pdfWords } from '../../support/read-pdf.ts';
import { matterFixture, sheetStamp } from '../../support/sheet-matter.ts';

const methods: readonly Method[] = ['hub', 'banks', 'panel', 'mix', 'panel', 'banks'];

/** As many scenarios as asked for, one of each method first. */
function comparing(count: number, label?: string): Comparison {
  const scenarios = methods
    .slice(0, count)
    .map((method, index) =>
      scenarioFixture(method, { id: `scenario-${index}`, ...(label === undefined ? {} : { label }) }),
    );
  return comparisonFixture({ scenarios });
}

function pdfOf(matter: Partial<SheetMatter>, paper: Paper = 'a4'): Promise<Uint8Array> {
  return comparisonPdf(sheetContent(matterFixture(matter)), sheetStamp, paper);
}

const laidOut = new Map<string, Promise<Uint8Array>>();

/** A sheet of so many scenarios, laid out once for all tests that read it. */
function sheetOf(count: number, paper: Paper = 'a4'): Promise<Uint8Array> {
  const key = `${count} ${paper}`;
  const sheet = laidOut.get(key) ?? pdfOf({ comparison: comparing(count) }, paper);
  laidOut.set(key, sheet);
  return sheet;
}

describe('the PDF sheet as a file', () => {
  it('leaves a writer that opens no address', async () => {
    await sheetOf(3);
    const images = { remote: 'http://127.0.0.1:9/panel.png' };
    const drawn = pdfmake.createPdf({ content: [{ image: 'remote' }], images }).getBuffer();
    await expect(drawn).rejects.toThrow(/denied by resource access policy/u);
  });

  it('leaves a writer that opens no other file', async () => {
    await sheetOf(3);
    const drawn = pdfmake.createPdf({ content: [{ image: import.meta.filename }] }).getBuffer();
    await expect(drawn).rejects.toThrow(/denied by resource access policy/u);
  });

  it('is PDF from its first byte to its last', async () => {
    const source = pdfSource(await sheetOf(3));
    expect(source.startsWith('%PDF-1.')).toBe(true);
    expect(source.trimEnd().endsWith('%%EOF')).toBe(true);
  });

  it('names its language and shows its title', async () => {
    const source = pdfSource(await sheetOf(3));
    expect(source).toContain('/Lang (en-GB)');
    expect(source).toContain('/DisplayDocTitle true');
    expect(source).toContain('(Comparison sheet: Coast and passes)');
  });

  it('holds a title with markup as text only', async () => {
    const { tour } = comparisonFixture();
    const label = 'Fjord & fell <north>';
    const source = pdfSource(await pdfOf({ comparison: { ...comparing(1), tour: { ...tour, label } } }));
    expect(source).toContain(`(Comparison sheet: ${label})`);
    expect(source).not.toContain('<dc:title>');
  });

  it('embeds every font it uses, with a way back to text', async () => {
    const source = pdfSource(await sheetOf(3));
    const count = (what: string): number => source.split(what).length - 1;
    expect(count('/Subtype /Type0')).toBeGreaterThan(0);
    expect(count('/FontFile2')).toBe(count('/Subtype /Type0'));
    expect(count('/ToUnicode')).toBe(count('/Subtype /Type0'));
    // One of the fourteen fonts that a reader brings itself.
    expect(source).not.toContain('/Subtype /Type1');
  });

  it('draws its figures as lines, not as pictures of dots', async () => {
    expect(pdfSource(await sheetOf(3))).not.toContain('/Subtype /Image');
  });

  it('is the same bytes for the same input', async () => {
    const again = await pdfOf({ comparison: comparing(3) });
    expect(Buffer.compare(await sheetOf(3), again)).toBe(0);
  });

  it('stays small enough to mail', async () => {
    const largestBytes = 200_000;
    expect((await sheetOf(6)).length).toBeLessThan(largestBytes);
  });
});

describe('the pages of the PDF sheet', () => {
  // ISO 216: A4 is 210 by 297 mm; ANSI/ASME Y14.1: Letter is 8.5 by 11 inches; a point is 1/72 inch of 25.4 mm.
  const sizePt = { a4: [(210 / 25.4) * 72, (297 / 25.4) * 72], letter: [8.5 * 72, 11 * 72] } as const;

  it.each<[number, Paper]>([
    [1, 'a4'],
    [3, 'a4'],
    [6, 'a4'],
    [1, 'letter'],
    [3, 'letter'],
    [6, 'letter'],
  ])('are two to four for %i scenarios on %s, all of that size', async (count, paper) => {
    const pdf = await sheetOf(count, paper);
    expect(pdfPageCount(pdf)).toBeGreaterThanOrEqual(2);
    expect(pdfPageCount(pdf)).toBeLessThanOrEqual(4);
    const boxes = [...pdfSource(pdf).matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/gu)];
    expect(boxes).toHaveLength(pdfPageCount(pdf));
    for (const [, width, height] of boxes) {
      expect(Number(width)).toBeCloseTo(sizePt[paper][0], 0);
      expect(Number(height)).toBeCloseTo(sizePt[paper][1], 0);
    }
  });
});

describe.skipIf(!canReadPdfText)('the text of the PDF sheet, read by another program', () => {
  it('keeps letters and signs beyond ASCII', async () => {
    const label = 'Ærø, Łódź, Çeşme, Niño – 5 kWh/m² · 20 °C';
    const text = pdfWords(await pdfOf({ comparison: comparing(1, label) }));
    expect(text).toContain(label);
  });

  it('loses nothing of a huge sheet, and does not give up on labels without a space', async () => {
    const { mass } = scenarioFixture('banks');
    const count = { kit: 200, assumptions: 300 };
    const lines = Array.from({ length: count.kit }, (_, index) => ({
      ...mass.lines[0]!,
      label: `kit-${index}-end`.padEnd(index % 20 === 0 ? 80 : 0, 'W'),
    }));
    const assumptions = Array.from({ length: count.assumptions }, (_, index): Assumption => ({
      name: `ground-${index}-end`,
      value: '1',
      basis: 'default',
      source: 'custom',
    }));
    const label = 'W'.repeat(80);
    const banks = scenarioFixture('banks', { label, mass: { ...mass, lines } });
    const pdf = await pdfOf({ comparison: comparisonFixture({ scenarios: [banks], assumptions }) });
    const letters = pdfWords(pdf).replaceAll(' ', '');
    expect(new Set(letters.match(/kit-\d+-end/gu)).size).toBe(count.kit);
    expect(new Set(letters.match(/ground-\d+-end/gu)).size).toBe(count.assumptions);
    expect(letters).toContain(label);
  });

  it('gives the answer, its reason and each scenario its figures', async () => {
    const text = pdfWords(await sheetOf(3));
    const { advice, scenarios } = comparisonFixture();
    for (const said of [advice.answer, advice.why, ...advice.notes]) expect(text).toContain(said);
    for (const { label, mass } of scenarios) {
      expect(text).toContain(label);
      expect(text).toContain(mass.carriedG.toLocaleString('en-GB'));
    }
    const layout = pdfText(await sheetOf(3));
    expect(layout).toMatch(/1 Generator hub 264 714 444 \+31 % none of 200/u);
    expect(layout).toMatch(/2 Two banks 49 853 0 \+7 % none of 200/u);
    expect(layout).toMatch(/3 Panel and buffer bank 99 1,031 0 −18 % 58 of 100/u);
  });

  it('says where things ride, what each leg risks and what would change the answer', async () => {
    const text = pdfWords(await sheetOf(3));
    for (const mount of ['In the front wheel', 'Handlebar', 'Frame', 'Rear rack'])
      expect(text).toContain(mount);
    const layout = pdfText(await sheetOf(3));
    expect(layout).toMatch(/Coast 14 .* 11 of 100 \(7 to 16\)/u);
    expect(layout).toMatch(/Passes 10 .* 58 of 100 \(51 to 65\)/u);
    expect(text).toContain('at 2 days or fewer Banks only leads');
  });

  it('says what to do at walls, what lights mean, and what can hurt', async () => {
    const text = pdfWords(await sheetOf(3));
    const { scenarios, cautions } = comparisonFixture();
    // The fonts have no narrow space: one that does not break stands for it, and is read as an ordinary one.
    for (const step of scenarios[0]!.stopRules.steps) expect(text).toContain(step.replaceAll('\u202f', ' '));
    for (const caution of cautions) expect(text).toContain(caution);
    expect(pdfText(await sheetOf(3))).toMatch(/20 Ah bank, 18 W in 61 4 of 4 46 to 61/u);
  });

  it('names the rules of the air and where each figure is from', async () => {
    const text = pdfWords(await sheetOf(3));
    const [first] = comparisonFixture().scenarios;
    expect(text).toContain(first!.air.defer);
    expect(text).toContain('(since 27 March 2026; an invented rule book)');
    for (const { name, value, source } of comparisonFixture().assumptions) {
      expect(text).toContain(`${name}: ${value}`);
      expect(text).toContain(source);
    }
  });

  it('closes each page with reminder, version, date and number', async () => {
    const pdf = await sheetOf(6);
    const pages = pdfPageCount(pdf);
    const text = pdfText(pdf);
    for (let page = 1; page <= pages; page += 1) {
      expect(text).toContain(
        `Estimates, not guarantees: carry a reserve. Chargewright 0.1.0, made on 18 April 2027, page ${page} of ${pages}`,
      );
    }
  });
});
