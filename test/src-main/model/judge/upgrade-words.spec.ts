import { describe, expect, it } from 'vitest';
import { marginChangeText, tourSentence, type Told } from '../../../../src-main/model/judge/upgrade-words.ts';
import { scoredRow } from '../../../support/score-fixture.ts';
import { pairedMarginOf } from '../../../support/upgrade-fixture.ts';

const told = (changes: Partial<Told>): string =>
  tourSentence({
    ...{ label: 'Coast', effect: 'helps', changesNothing: false, margin: pairedMarginOf() },
    rows: { before: scoredRow('before', 0.5), after: scoredRow('after', 0.7) },
    ...changes,
  });
const nan = Number.NaN;
const perhaps = pairedMarginOf({ before: 0.1, after: 0.12, difference: 0.02, low: -0.03, high: 0.05 });

describe('the change of a margin in words', () => {
  it.each([
    ['not known', { difference: nan, low: nan, high: nan }],
    ['no difference', { difference: 0, low: 0, high: 0 }],
    ['no clear difference (−3 to +5 points)', { difference: 0.02, low: -0.03, high: 0.05 }],
    ['20 points more (15 to 26)', {}],
    ['20 points less (15 to 26)', { difference: -0.2, low: -0.26, high: -0.15 }],
    ['at least 20 points more (15 to 26)', { cappedAfter: true }],
    ['both carry more than the most that is tried', { cappedBefore: true, cappedAfter: true }],
  ])('is "%s"', (text, changes) => {
    expect(marginChangeText(pairedMarginOf(changes))).toBe(text);
  });
});

describe('the sentence on a tour', () => {
  it('says that no verdict is possible, and for want of what', () => {
    const rows = {
      before: scoredRow('before', 0.5),
      after: scoredRow('after', 0.5, { notKnown: ['margin'] }),
    };
    expect(told({ effect: 'not-known', rows })).toBe(
      'Coast: a figure is not known (Energy margin), so there is no verdict.',
    );
  });

  it('says that a failing plan is carried', () => {
    expect(told({})).toBe(
      'Coast: it carries the plan, which fails without it: energy margin from −12\u202f% to +8\u202f%, 20 points more (15 to 26).',
    );
  });

  it('says that it is better and not enough', () => {
    const margin = pairedMarginOf({ before: -0.4, after: -0.2 });
    expect(told({ effect: 'not-enough', margin })).toBe(
      'Coast: better, but still not carried: energy margin from −40\u202f% to −20\u202f%, 20 points more (15 to 26).',
    );
  });

  it('never calls an unclear difference an improvement of the margin', () => {
    const failing = { ...perhaps, before: -0.3, after: -0.28 };
    for (const text of [told({ margin: perhaps }), told({ effect: 'not-enough', margin: failing })]) {
      expect(text).toContain('no clear difference');
      expect(text).not.toMatch(/better, but|points more|carries the plan/);
    }
  });

  it('says where the score moved', () => {
    const rows = {
      before: scoredRow('before', 0.9),
      after: scoredRow('after', 0.8, { parts: { cost: 0.6, grams: 0.5, frontWheelGrams: 0.9, margin: 1 } }),
    };
    expect(told({ effect: 'hurts', margin: perhaps, rows })).toMatch(
      /it scores 80 of 100 instead of 90 \(worse: to buy, grams carried\);/,
    );
  });

  it('says which limit it passes', () => {
    const excludedBy = [{ limit: 'toBuy' as const, text: 'costs 420 EUR, your limit is 300 EUR' }];
    const rows = { before: scoredRow('before', 0.5), after: scoredRow('after', 0.9, { excludedBy }) };
    expect(told({ effect: 'hurts', rows })).toMatch(/^Coast: it costs 420 EUR, your limit is 300 EUR;/);
  });

  it('says that a carried plan fails, or what the rider does not accept', () => {
    const margin = pairedMarginOf({ before: 0.1, after: -0.1, difference: -0.2, low: -0.3, high: -0.1 });
    expect(told({ effect: 'hurts', margin })).toMatch(/the plan, carried before, fails with it/);
    const rows = {
      before: scoredRow('before', 0.5),
      after: scoredRow('after', 0.5, { unacceptable: ['grams'] }),
    };
    expect(told({ effect: 'hurts', rows })).toMatch(/beyond what you accept \(Grams carried\)/);
  });

  it('says that nothing changes', () => {
    const rows = { before: scoredRow('before', 0.5), after: scoredRow('after', 0.5) };
    expect(told({ effect: 'no-odds', changesNothing: true, rows })).toMatch(
      /changes nothing: .* stay as they are; it scores 50 of 100 as before/,
    );
    expect(told({ effect: 'no-odds', margin: perhaps, rows })).toMatch(/no odds by your weights/);
  });
});
