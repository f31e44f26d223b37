import { describe, expect, it } from 'vitest';
import { notesOn } from '../../../../src-main/model/judge/advice-notes.ts';
import type { AdvisedScenario, Standing } from '../../../../src-main/model/judge/advised.ts';

const drawn = { histories: 200, confidence: 0.9 };

const standing = (score: number, changes: Partial<AdvisedScenario> = {}): Standing => ({
  row: {
    id: `kit-${score}`,
    score,
    rank: 1,
    parts: { cost: 0, grams: 0, frontWheelGrams: 0, margin: 0 },
    unacceptable: [],
    dominatedBy: null,
  },
  scenario: {
    id: `kit-${score}`,
    label: `Kit ${score}`,
    toBuy: { minor: 8400, currency: 'EUR' },
    notConverted: [],
    carriedG: 610,
    frontWheelG: 0,
    margin: {
      ...{ value: 0.31, capped: false, limitedBy: { device: 'Phone', day: 9 } },
      ...{ usual: 0.4, usualCapped: false },
    },
    risk: { share: 0.05, low: 0.0274, high: 0.0896 },
    firstShort: { device: 'Phone', day: 9, earliestDay: 6 },
    ...changes,
  },
});
const { margin } = standing(0).scenario;

describe('notesOn()', () => {
  it('has nothing to say of nothing', () => {
    expect(notesOn([], drawn)).toEqual([]);
  });

  it('is silent on a clear ranking whose first is safe', () => {
    expect(notesOn([standing(0.8), standing(0.5)], drawn)).toEqual([]);
  });

  // Wilson 1927, 95 %, 16 of 200, by hand: 4.99 to 12.60 %.
  it('tells a risk above 5 of 100 though the margin is met', () => {
    const risk = { share: 0.08, low: 0.0499, high: 0.126 };
    expect(notesOn([standing(0.8, { risk }), standing(0.5)], drawn)).toEqual([
      'With Kit 0.8 a must-have runs flat in 8 of 100 histories (5 to 13), the phone first, on day 9; at the earliest day 6.',
    ]);
    expect(notesOn([standing(0.8), standing(0.5, { risk })], drawn)).toEqual([]);
  });

  it('calls luck what only half of the histories give', () => {
    const lucky = standing(0.8, { margin: { ...margin, usual: 0.72 } });
    expect(notesOn([lucky], drawn)).toEqual([
      'Much of what Kit 0.8 has to spare is luck: +72\u202f% in half of the histories, only +31\u202f% in 90 of 100.',
    ]);
  });

  it('calls nothing luck at 25 points', () => {
    expect(notesOn([standing(0.8, { margin: { ...margin, value: 0.25, usual: 0.5 } })], drawn)).toEqual([]);
  });

  it('calls a close call close, but not with one that is refused', () => {
    const close = standing(0.78);
    const said = 'It is close: by your weights Kit 0.78 scores 78 of 100, the first 80.';
    expect(notesOn([standing(0.8), close], drawn)).toEqual([said]);
    const refused = { ...close, row: { ...close.row, unacceptable: ['cost' as const] } };
    expect(notesOn([standing(0.8), refused], drawn)).toEqual([]);
  });
});
