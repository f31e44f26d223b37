import { describe, expect, it } from 'vitest';
import type { ScoredRow } from '../../../../shared-types/comparison.ts';
import { notesOn } from '../../../../src-main/model/judge/advice-notes.ts';
import type { AdvisedScenario, Standing } from '../../../../src-main/model/judge/advised.ts';
import { scoredRow } from '../../../support/score-fixture.ts';

const drawn = {
  histories: 200,
  confidence: 0.9,
  remedies: null,
  ownsNoKit: false,
  tour: { days: 24 },
};

const standing = (
  score: number,
  changes: Partial<AdvisedScenario> = {},
  row: Partial<ScoredRow> = {},
): Standing => ({
  row: scoredRow(`kit-${score}`, score, row),
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
    ...{ spilledShare: 0, daysWithoutWall: 24, kindsToBuy: [] },
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

describe('notesOn() a standing', () => {
  it('calls no call close with one that a limit leaves out', () => {
    const excludedBy = [{ limit: 'toBuy', text: 'costs too much' }] as const;
    const out = standing(0.79, {}, { excludedBy, topsis: null });
    expect(notesOn([standing(0.8), out], drawn)).toEqual(['Kit 0.79 is left out: it costs too much.']);
  });

  it('names every limit that leaves a scenario out', () => {
    const excludedBy = [
      { limit: 'toBuy', text: 'costs 420 EUR, your limit is 300 EUR' },
      { limit: 'grams', text: 'weighs 1,520 g, your limit is 1,000 g' },
    ] as const;
    expect(notesOn([standing(0.8), standing(0.5, {}, { excludedBy, topsis: null })], drawn)).toEqual([
      'Kit 0.5 is left out: it costs 420 EUR, your limit is 300 EUR; it weighs 1,520 g, your limit is 1,000 g.',
    ]);
  });

  it('says when the second opinion puts another first', () => {
    const first = standing(0.8, {}, { topsis: { closeness: 0.61, rank: 2 } });
    const second = standing(0.7, {}, { rank: 2, topsis: { closeness: 0.643, rank: 1 } });
    expect(notesOn([first, second], drawn)).toEqual([
      'The second opinion differs: by nearness to the best of every figure (TOPSIS) Kit 0.7 is first with 0.64 of 1, Kit 0.8 has 0.61.',
    ]);
  });

  it('says nothing of a second opinion that agrees, be it on a shared rank', () => {
    const shared = standing(0.7, {}, { rank: 2, topsis: { closeness: 0.8, rank: 1 } });
    expect(notesOn([standing(0.8), shared], drawn)).toEqual([]);
  });
});
