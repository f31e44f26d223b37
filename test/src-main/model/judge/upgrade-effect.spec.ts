import { describe, expect, it } from 'vitest';
import type { ScoredRow } from '../../../../shared-types/comparison.ts';
import { effectOf, isClear } from '../../../../src-main/model/judge/upgrade-effect.ts';
import { scoredRow } from '../../../support/score-fixture.ts';
import { pairedMarginOf } from '../../../support/upgrade-fixture.ts';

const rows = (before: number, after: number, changes: Partial<ScoredRow> = {}) => ({
  before: scoredRow('before', before),
  after: scoredRow('after', after, changes),
});
const carried = pairedMarginOf({ before: 0.1, after: 0.3 });
const perhaps = { difference: 0.02, low: -0.03, high: 0.05 };
const worse = { difference: -0.2, low: -0.26, high: -0.15 };
const tooDear = { excludedBy: [{ limit: 'toBuy' as const, text: 'costs too much' }] };

describe('a difference of margins', () => {
  it('is clear only when its interval holds no 0', () => {
    expect(isClear({ low: 0.01, high: 0.02 })).toBe(true);
    expect(isClear({ low: -0.02, high: -0.01 })).toBe(true);
    expect(isClear({ low: 0, high: 0.02 })).toBe(false);
    expect(isClear({ low: -0.02, high: 0.01 })).toBe(false);
  });
});

describe('the effect of a change on a tour', () => {
  it('is not known where a figure is not', () => {
    const unknown = pairedMarginOf({
      after: Number.NaN,
      difference: Number.NaN,
      low: Number.NaN,
      high: Number.NaN,
    });
    expect(effectOf({ margin: unknown, rows: rows(0.5, 0.9) })).toBe('not-known');
    expect(effectOf({ margin: carried, rows: rows(0.5, 0.9, { notKnown: ['cost'] }) })).toBe('not-known');
  });

  it('helps when a plan that fails is carried, whatever the score', () => {
    expect(effectOf({ margin: pairedMarginOf(), rows: rows(0.5, 0.4) })).toBe('helps');
  });

  it('does not help when luck may have carried it', () => {
    const lucky = pairedMarginOf({ before: -0.01, after: 0.01, ...perhaps });
    expect(effectOf({ margin: lucky, rows: rows(0.5, 0.5) })).toBe('no-odds');
  });

  it('helps when the score rises by three of 100, and makes no odds below', () => {
    expect(effectOf({ margin: carried, rows: rows(0.5, 0.54) })).toBe('helps');
    expect(effectOf({ margin: carried, rows: rows(0.5, 0.52) })).toBe('no-odds');
  });

  it('is not enough while the plan is still not carried', () => {
    const still = pairedMarginOf({ before: -0.4, after: -0.2 });
    expect(effectOf({ margin: still, rows: rows(0.5, 0.6) })).toBe('not-enough');
    expect(effectOf({ margin: still, rows: rows(0.5, 0.5) })).toBe('not-enough');
  });

  it('hurts when the score falls, a carried plan fails, or the terms of the rider refuse it', () => {
    expect(effectOf({ margin: carried, rows: rows(0.5, 0.46) })).toBe('hurts');
    const fails = pairedMarginOf({ before: 0.1, after: -0.1, ...worse });
    expect(effectOf({ margin: fails, rows: rows(0.5, 0.6) })).toBe('hurts');
    expect(effectOf({ margin: pairedMarginOf(), rows: rows(0.5, 0.6, tooDear) })).toBe('hurts');
    expect(effectOf({ margin: pairedMarginOf(), rows: rows(0.5, 0.6, { unacceptable: ['grams'] }) })).toBe(
      'hurts',
    );
  });

  it('helps when a limit is no longer passed', () => {
    const refused = { before: scoredRow('before', 0.5, tooDear), after: scoredRow('after', 0.5) };
    expect(effectOf({ margin: carried, rows: refused })).toBe('helps');
  });
});
