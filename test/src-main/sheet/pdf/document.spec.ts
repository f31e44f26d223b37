import { describe, expect, it } from 'vitest';
import type { TDocumentDefinitions } from 'pdfmake/interfaces';
import type { Comparison } from '../../../../shared-types/comparison.ts';
import { sheetDocument, type Layout } from '../../../../src-main/sheet/pdf/document.ts';
import { comparisonFixture } from '../../../support/comparison-fixture.ts';
import { textsOf } from '../../../support/content-text.ts';
import { contentOf, sheetStamp } from '../../../support/sheet-matter.ts';

const layout: Layout = { paper: 'a4', scale: 1, onPages: () => undefined };

function documentOf(
  comparison: Partial<Comparison> = {},
  changes: Partial<Layout> = {},
): TDocumentDefinitions {
  return sheetDocument(contentOf(comparison), sheetStamp, { ...layout, ...changes });
}

describe('sheetDocument', () => {
  it('holds no character its font lacks', () => {
    const { advice } = comparisonFixture();
    const { content, info } = documentOf({ advice: { ...advice, why: 'Carries 31\u202f% more.' } });
    expect(textsOf(content).join('')).not.toContain('\u202f');
    expect(textsOf(content)).toContain('Carries 31\u00a0% more.');
    expect(info?.title).not.toContain('\u202f');
  });

  it('goes from answer to figures to what to carry to cautions to grounds', () => {
    const texts = textsOf(documentOf().content);
    const order = [
      'Comparison sheet: Coast and passes',
      'Take the generator hub.',
      'Scorecard',
      'Energy margin, 90 of 100 histories',
      'To pack',
      'At walls and between them',
      'Cautions',
      'Assumptions',
    ].map((text) => texts.indexOf(text));
    expect(order).not.toContain(-1);
    expect(order).toEqual(order.toSorted((a, b) => a - b));
  });

  it('dates itself by its stamp, not by a clock', () => {
    const { info } = documentOf();
    expect(info?.creationDate?.toISOString()).toBe('2027-04-18T00:00:00.000Z');
  });

  it('numbers each page beside reminder and version, and tells how many there are', () => {
    let told = 0;
    const { footer } = documentOf({}, { onPages: (pages) => void (told = pages) });
    if (typeof footer !== 'function') throw new Error('the foot line must know its page');
    const size = { width: 595, height: 842, orientation: 'portrait' } as const;
    expect(textsOf(footer(2, 3, size))).toEqual([
      'Estimates, not guarantees: carry a reserve.',
      'Chargewright 0.1.0, made on 18 April 2027, page 2 of 3',
    ]);
    expect(told).toBe(3);
  });

  it('is laid out for the paper asked for', () => {
    expect(documentOf({}, { paper: 'letter' }).pageSize).toBe('LETTER');
    expect(documentOf().pageSize).toBe('A4');
  });
});
