import { describe, expect, it } from 'vitest';
import {
  breaking,
  methodColour,
  pageMargins,
  section,
  textWidthPt,
} from '../../../../src-main/sheet/pdf/look.ts';
import { valuesOf } from '../../../support/content-text.ts';
import { expectNear } from '../../../support/near.ts';

// ISO 216: A4 is 210 mm wide; a point is 1/72 inch of 25.4 mm.
const a4WidthPt = (210 / 25.4) * 72;

describe('breaking', () => {
  it('breaks anywhere only for an over-long word', () => {
    expect(breaking('W'.repeat(80)).wordBreak).toBe('break-all');
    expect(breaking('a bank with W'.repeat(6)).wordBreak).toBe('normal');
  });
});

describe('section', () => {
  it('keeps a short one whole and a long one not', () => {
    expect(section('Cautions', 'Carry a reserve.', true)).toMatchObject({ unbreakable: true });
    expect(section('Cautions', 'Carry a reserve.', false)).toMatchObject({ unbreakable: false });
  });

  it('gives only a long one a movable heading', () => {
    expect(valuesOf(section('Cautions', '', true), 'headlineLevel')).toEqual([]);
    expect(valuesOf(section('Cautions', '', false), 'headlineLevel')).toEqual([1]);
  });
});

describe('methodColour', () => {
  // Okabe & Ito, Color Universal Design (2008): blue, bluish green and reddish purple as published;
  // the orange #e69f00 is darkened for paper, our own choice.
  it('takes the published colour-blind-safe set', () => {
    expect(methodColour).toMatchObject({ banks: '#0072b2', hub: '#009e73', mix: '#cc79a7' });
  });
});

describe('textWidthPt', () => {
  it('is an A4 page less its margins', () => {
    expectNear(textWidthPt, a4WidthPt - pageMargins[0] - pageMargins[2], 0.5, 'text width, pt');
  });
});
