import { describe, expect, it } from 'vitest';
import { documentTitle, sheetDocument } from '../../../../src-main/sheet/pdf/document.ts';
import { comparisonFixture } from '../../../support/comparison-fixture.ts';
import { textsOf } from '../../../support/content-text.ts';

const stamp = { madeOn: '2027-04-18', version: '0.1.0' };

describe('sheetDocument', () => {
  it('holds no character its font lacks', () => {
    const { advice } = comparisonFixture();
    const comparison = comparisonFixture({ advice: { ...advice, why: 'Carries 31\u202f% more.' } });
    const { content, info } = sheetDocument(comparison, stamp);
    expect(textsOf(content).join('')).not.toContain('\u202f');
    expect(textsOf(content)).toContain('Carries 31\u00a0% more.');
    expect(info?.title).not.toContain('\u202f');
  });

  it('goes from answer to figures to cautions to grounds', () => {
    const texts = textsOf(sheetDocument(comparisonFixture(), stamp).content);
    const order = [
      documentTitle(comparisonFixture()),
      'Take the generator hub.',
      'Energy margin, 90 of 100 histories',
      'Mean day: Wh at the plug, and minutes later on the road',
      'To pack, g',
      'Cautions',
      'Assumptions',
    ].map((text) => texts.indexOf(text));
    expect(order).not.toContain(-1);
    expect(order).toEqual(order.toSorted((a, b) => a - b));
  });

  it('dates itself by its stamp, not by a clock', () => {
    const { info } = sheetDocument(comparisonFixture(), stamp);
    expect(info?.creationDate?.toISOString()).toBe('2027-04-18T00:00:00.000Z');
  });

  it('numbers each page beside reminder and version', () => {
    const { footer } = sheetDocument(comparisonFixture(), stamp);
    if (typeof footer !== 'function') throw new Error('the foot line must know its page');
    const size = { width: 595, height: 842, orientation: 'portrait' } as const;
    expect(textsOf(footer(2, 3, size))).toEqual([
      'Estimates, not guarantees: carry a reserve.',
      'Chargewright 0.1.0, made on 18 April 2027, page 2 of 3',
    ]);
  });

  it('says how much is used and how often drawn', () => {
    const texts = textsOf(sheetDocument(comparisonFixture({ histories: 200 }), stamp).content);
    expect(texts).toContainEqual(expect.stringMatching(/Use 30\.9 Wh a day; 200 histories\.$/u));
  });
});
