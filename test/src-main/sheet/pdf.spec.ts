import pdfmake from 'pdfmake';
import { describe, expect, it } from 'vitest';
import type { Assumption, Comparison } from '../../../shared-types/comparison.ts';
import type { Method } from '../../../shared-types/scenario.ts';
import { comparisonPdf } from '../../../src-main/sheet/pdf.ts';
import { comparisonFixture, scenarioFixture } from '../../support/comparison-fixture.ts';
import { canReadPdfText, pdfPageCount, pdfSource, pdfText } from '../../support/read-pdf.ts';

const stamp = { madeOn: '2027-04-18', version: '0.1.0' };

function six(label: (method: Method) => string): Comparison {
  const methods: readonly Method[] = ['hub', 'banks', 'panel', 'mix', 'panel', 'banks'];
  const scenarios = methods.map((method, index) =>
    scenarioFixture(method, { id: `scenario-${index}`, label: label(method) }),
  );
  return comparisonFixture({ scenarios });
}

/** As many assumptions and cautions as a real tour gives, and an answer and reason of two lines each. */
function fullSheet(): Comparison {
  const { assumptions, cautions, advice } = comparisonFixture();
  const many = Array.from({ length: 34 }, (_, index): Assumption => {
    const each = assumptions[index % assumptions.length]!;
    return { ...each, name: `${each.name}, ${index}` };
  });
  return comparisonFixture({
    assumptions: many,
    cautions: [...cautions, cautions.join(' '), ...cautions.slice(0, 2)],
    advice: { ...advice, answer: `${advice.answer} ${advice.why}`, why: `${advice.why} ${advice.why}` },
  });
}

describe('the PDF sheet as a file', () => {
  it('leaves a writer that opens no address', async () => {
    await comparisonPdf(comparisonFixture(), stamp);
    const images = { remote: 'http://127.0.0.1:9/panel.png' };
    const drawn = pdfmake.createPdf({ content: [{ image: 'remote' }], images }).getBuffer();
    await expect(drawn).rejects.toThrow(/denied by resource access policy/u);
  });

  it('leaves a writer that opens no other file', async () => {
    await comparisonPdf(comparisonFixture(), stamp);
    const drawn = pdfmake.createPdf({ content: [{ image: import.meta.filename }] }).getBuffer();
    await expect(drawn).rejects.toThrow(/denied by resource access policy/u);
  });

  it('is PDF from its first byte to its last', async () => {
    const source = pdfSource(await comparisonPdf(comparisonFixture(), stamp));
    expect(source.startsWith('%PDF-1.')).toBe(true);
    expect(source.trimEnd().endsWith('%%EOF')).toBe(true);
  });

  it('names its language and shows its title', async () => {
    const source = pdfSource(await comparisonPdf(comparisonFixture(), stamp));
    expect(source).toContain('/Lang (en-GB)');
    expect(source).toContain('/DisplayDocTitle true');
    expect(source).toContain('(Comparison sheet: Coast and passes)');
  });

  it('holds a title with markup as text only', async () => {
    const { tour } = comparisonFixture();
    const label = 'Fjord & fell <north>';
    const source = pdfSource(await comparisonPdf(comparisonFixture({ tour: { ...tour, label } }), stamp));
    expect(source).toContain(`(Comparison sheet: ${label})`);
    expect(source).not.toContain('<dc:title>');
  });

  it('embeds its fonts with a way back to text', async () => {
    const source = pdfSource(await comparisonPdf(comparisonFixture(), stamp));
    expect(source).toContain('/FontFile2');
    expect(source).toContain('/ToUnicode');
  });

  it('is the same bytes for the same input', async () => {
    const first = await comparisonPdf(comparisonFixture(), stamp);
    const second = await comparisonPdf(comparisonFixture(), stamp);
    expect(Buffer.compare(first, second)).toBe(0);
  });

  it('stays small enough to mail', async () => {
    const largestBytes = 100_000;
    expect((await comparisonPdf(fullSheet(), stamp)).length).toBeLessThan(largestBytes);
  });
});

describe('the pages of the PDF sheet', () => {
  it('are two at most for six with long labels', async () => {
    const long = six((method) =>
      `${method}: every charger and cable for the long crossing `.repeat(2).slice(0, 80),
    );
    expect(pdfPageCount(await comparisonPdf(long, stamp))).toBeLessThanOrEqual(2);
  });

  it('are three at most for labels without a space', async () => {
    expect(
      pdfPageCount(
        await comparisonPdf(
          six(() => 'W'.repeat(80)),
          stamp,
        ),
      ),
    ).toBeLessThanOrEqual(3);
  });

  it('are one for one scenario and for three', async () => {
    const one = comparisonFixture({ scenarios: [scenarioFixture('panel')] });
    expect(pdfPageCount(await comparisonPdf(one, stamp))).toBe(1);
    expect(pdfPageCount(await comparisonPdf(comparisonFixture(), stamp))).toBe(1);
  });

  it('are two at most for three with many assumptions', async () => {
    expect(pdfPageCount(await comparisonPdf(fullSheet(), stamp))).toBeLessThanOrEqual(2);
  });
});

describe.skipIf(!canReadPdfText)('the text of the PDF sheet, read by another program', () => {
  it('keeps letters and signs beyond ASCII', async () => {
    const label = 'Ærø, Łódź, Çeşme, Niño – 5 kWh/m² · 20 °C';
    const panel = scenarioFixture('panel', { label });
    const text = pdfText(await comparisonPdf(comparisonFixture({ scenarios: [panel] }), stamp));
    expect(text).toContain('Niño – 5 kWh/m² · 20 °C');
    expect(text).toContain('Łódź');
    expect(text).toContain('Ærø');
  });

  it('loses no line of kit longer than a page', async () => {
    const { mass } = scenarioFixture('banks');
    const lines = Array.from({ length: 200 }, (_, index) => ({
      ...mass.lines[0]!,
      label: `kit-${index}-end`,
    }));
    const banks = scenarioFixture('banks', { mass: { ...mass, lines } });
    const text = pdfText(await comparisonPdf(comparisonFixture({ scenarios: [banks] }), stamp));
    expect(text.match(/kit-\d+-end/gu)).toHaveLength(lines.length);
  });

  it('loses no assumption when there are hundreds', async () => {
    const assumptions = Array.from({ length: 300 }, (_, index): Assumption => ({
      name: `ground-${index}-end`,
      value: '1',
      basis: 'default',
      source: 'custom',
    }));
    const text = pdfText(await comparisonPdf(comparisonFixture({ assumptions }), stamp));
    expect(text.match(/ground-\d+-end/gu)).toHaveLength(assumptions.length);
  });

  it('shows a shortfall with a true minus', async () => {
    expect(pdfText(await comparisonPdf(comparisonFixture(), stamp))).toContain('−18 %');
  });

  it('gives each scenario its row of figures', async () => {
    const text = pdfText(await comparisonPdf(comparisonFixture(), stamp));
    expect(text).toMatch(/1 Generator hub 264 EUR 714 444 \+31 % limited by Phone, day 19/u);
    expect(text).toMatch(/2 Two banks 49 EUR 853 0 \+7 % limited by Navigation unit,/u);
    expect(text).toMatch(/3 Panel and buffer bank 99 EUR 1,031 0 −18 % limited by Phone, day 9/u);
  });

  it('closes each page with reminder, version and number', async () => {
    const text = pdfText(
      await comparisonPdf(
        six((method) => method),
        stamp,
      ),
    );
    for (const page of ['page 1 of 2', 'page 2 of 2']) {
      expect(text).toContain(
        `Estimates, not guarantees: carry a reserve. Chargewright 0.1.0, made on 18 April 2027, ${page}`,
      );
    }
  });
});
