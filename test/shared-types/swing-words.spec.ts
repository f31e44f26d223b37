import { describe, expect, it } from 'vitest';
import type { Flip } from '../../shared-types/swings.ts';
import { flipsText, flipText, plannedText, swingValueText } from '../../shared-types/swing-words.ts';
import { swingFixture, swingsFixture, wallsFixture } from '../support/swings-fixture.ts';

const swings = swingsFixture();
const plain = (text: string): string => text.replaceAll(/[\u00a0\u202f]/gu, ' ');

describe('swingValueText()', () => {
  it.each([
    ['factor', 0.85, '−15 %'],
    ['factor', 1.2, '+20 %'],
    ['factor', 1, 'as planned'],
    ['luck', -1, 'never'],
    ['luck', 0, 'as planned'],
    ['luck', 1, 'always'],
    ['luck', -0.4, '40 % of the way to never'],
    ['luck', 0.25, '25 % of the way to always'],
    ['days', 1, '1 day'],
    ['days', 6, '6 days'],
    ['share', 0.55, '55 %'],
    ['number', 0.29, '0.29'],
  ] as const)('writes %s %d as "%s"', (scale, value, text) => {
    expect(plain(swingValueText(scale, value, 'en-GB'))).toBe(text);
  });
});

describe('plannedText()', () => {
  it('names a plan that is no point of the range', () => {
    expect(plannedText(wallsFixture)).toBe('as planned');
    expect(plain(plannedText({ scale: 'share', base: 0.6 }))).toBe('60 %');
  });
});

describe('flipText()', () => {
  const flip = (changes: Partial<Flip>): Flip => ({
    ...{ side: 'above', value: 6, leaderId: 'demo-hub', because: null },
    ...changes,
  });

  it.each([
    ['days', flip({}), 'from 6 days on Generator hub leads'],
    ['days', flip({ side: 'below', value: 2 }), 'at 2 days or fewer Generator hub leads'],
    ['days', flip({ side: 'below', value: 1 }), 'at 1 day Generator hub leads'],
    ['days', flip({ side: 'at', value: 4 }), 'at an even 4 days already Generator hub leads'],
    ['factor', flip({ side: 'below', value: 0.92 }), 'from −8 % down Generator hub leads'],
    ['luck', flip({ side: 'below', value: -0.4 }), 'from 40 % of the way to never Generator hub leads'],
    ['luck', flip({ value: 1 }), 'at always Generator hub leads'],
    ['factor', flip({ value: 1.1, leaderId: null }), 'from +10 % up limits leave out all'],
    ['factor', flip({ value: 1.1, leaderId: 'gone' }), 'from +10 % up a removed scenario leads'],
  ] as const)('says of %s where another leads', (scale, each, text) => {
    expect(plain(flipText(swings, scale, each))).toBe(text);
  });
});

describe('flipsText()', () => {
  it('says so where nothing in the range turns the order', () => {
    expect(flipsText(swings, swingFixture())).toBe('none in range');
  });

  it('tells both sides, and nothing of an order that is none', () => {
    const both = swingFixture({
      flips: [
        { side: 'below', value: 0.9, leaderId: 'demo-hub', because: null },
        { side: 'above', value: 1.1, leaderId: 'demo-banks', because: null },
      ],
    });
    expect(plain(flipsText(swings, both))).toBe(
      'from −10 % down Generator hub leads; from +10 % up Banks only leads',
    );
    expect(flipsText(swingsFixture({ level: true }), both)).toBe('level as planned');
  });
});
