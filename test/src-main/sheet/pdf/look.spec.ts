import type { Node } from 'pdfmake/interfaces';
import { describe, expect, it } from 'vitest';
import {
  breakableHeading,
  leavesHeadingAlone,
  lookOf,
  pageMargins,
  riderText,
} from '../../../../src-main/sheet/pdf/look.ts';
import { expectNear } from '../../../support/near.ts';

describe('riderText', () => {
  it('breaks anywhere only for a word longer than its line', () => {
    expect(riderText('W'.repeat(80)).wordBreak).toBe('break-all');
    expect(riderText('a bank with W'.repeat(6)).wordBreak).toBe('normal');
    expect(riderText('W'.repeat(30)).wordBreak).toBe('normal');
    expect(riderText('W'.repeat(30), {}, 22).wordBreak).toBe('break-all');
  });
});

describe('lookOf', () => {
  // ISO 216: A4 is 210 mm wide; ANSI/ASME Y14.1: Letter is 8.5 inches; a point is 1/72 inch of 25.4 mm.
  it.each([
    ['a4', (210 / 25.4) * 72],
    ['letter', 8.5 * 72],
  ] as const)('is as wide as %s less its margins', (paper, widthPt) => {
    expectNear(lookOf(paper, 1).widthPt, widthPt - pageMargins[0] - pageMargins[2], 0.5, 'text width, pt');
  });

  it('scales the type and nothing else', () => {
    const [large, small] = [lookOf('a4', 1), lookOf('a4', 0.5)];
    expect(small.widthPt).toBe(large.widthPt);
    expect(small.size.figure).toBe(large.size.figure / 2);
    expect(small.size.reference).toBe(large.size.reference / 2);
  });
});

describe('leavesHeadingAlone', () => {
  const node = (headlineLevel: number | undefined, verticalRatio: number): Node =>
    ({ headlineLevel, startPosition: { verticalRatio } }) as unknown as Node;
  const following = (count: number) => ({ getFollowingNodesOnPage: () => Array<Node>(count) });

  it('moves a heading that nothing, or next to nothing, would follow', () => {
    expect(leavesHeadingAlone(node(breakableHeading, 0.5), following(0))).toBe(true);
    expect(leavesHeadingAlone(node(breakableHeading, 0.97), following(3))).toBe(true);
  });

  it('leaves other headings, and all that is no heading, where they are', () => {
    expect(leavesHeadingAlone(node(breakableHeading, 0.5), following(3))).toBe(false);
    expect(leavesHeadingAlone(node(undefined, 0.99), following(0))).toBe(false);
  });
});
