import { describe, expect, it } from 'vitest';
import type { ScoredRow } from '../../../../shared-types/comparison.ts';
import { advise } from '../../../../src-main/model/judge/advice.ts';
import type { AdvisedScenario } from '../../../../src-main/model/judge/advised.ts';

/** Nothing of this calls for a sentence. */
const quiet = { spilledShare: 0, daysWithoutWall: 24, kindsToBuy: [] } as const;

const scenario = (id: string, changes: Partial<AdvisedScenario> = {}): AdvisedScenario => ({
  id,
  label: `Kit ${id}`,
  toBuy: { minor: 8400, currency: 'EUR' },
  notConverted: [],
  carriedG: 610,
  frontWheelG: 0,
  margin: {
    value: 0.31,
    capped: false,
    limitedBy: { device: 'Phone', day: 9 },
    usual: 0.4,
    usualCapped: false,
  },
  risk: { share: 0, low: 0, high: 0.0188 },
  firstShort: null,
  ...quiet,
  ...changes,
});
const short = (id: string, value: number): AdvisedScenario =>
  scenario(id, {
    margin: {
      ...{ value, capped: false, limitedBy: { device: 'Navigation unit', day: 12 } },
      ...{ usual: value + 0.1, usualCapped: false },
    },
    risk: { share: 0.58, low: 0.5107, high: 0.6463 },
    firstShort: { device: 'Navigation unit', day: 11, earliestDay: 7 },
  });
const noParts = {
  ...{ cost: 0, grams: 0, frontWheelGrams: 0, margin: 0 },
  ...{ risk: 0, minutesLost: 0, daysWithoutWall: 0 },
};

const drawn = {
  histories: 200,
  confidence: 0.9,
  remedies: null,
  ownsNoKit: false,
  tour: { days: 24 },
};
const ranked = (...rows: (readonly [id: string, score: number])[]): ScoredRow[] =>
  rows.map(([id, score], index) => ({
    id,
    score,
    rank: index + 1,
    parts: noParts,
    ...{ unacceptable: [], excludedBy: [], notKnown: [] },
    ...{ dominatedBy: null, topsis: null },
  }));

describe('advise()', () => {
  it('says that there is nothing to compare', () => {
    expect(advise([], [], drawn).answer).toContain('nothing to compare');
  });

  it('says in how many histories the rider wants it to hold', () => {
    const sure = { ...drawn, confidence: 0.95 };
    expect(advise([scenario('a')], ranked(['a', 0.8]), sure).answer).toContain('in 95 of 100 histories');
  });

  it('names what to take with its margin, grams and price', () => {
    const { answer } = advise([scenario('a'), scenario('b')], ranked(['a', 0.8], ['b', 0.5]), drawn);
    expect(answer).toBe(
      'Take Kit a. It carries 31\u202f% more use than you plan in 90 of 100 histories, weighs 610\u00a0g and costs 84\u00a0EUR to complete.',
    );
  });

  it('says that owned kit costs nothing more', () => {
    const owned = scenario('a', { toBuy: { minor: 0, currency: 'EUR' } });
    expect(advise([owned], ranked(['a', 0.8]), drawn).answer).toContain('costs nothing more');
  });

  it('tells how a failing scenario fails', () => {
    const { why } = advise([scenario('a'), short('b', -0.28)], ranked(['a', 0.8], ['b', 0.5]), drawn);
    expect(why).toBe(
      'Kit b does not carry the plan: use must be cut by 28\u202f%, or a must-have runs flat in 58 of 100 histories, the navigation unit first, on day 11.',
    );
  });

  it('never says take of a kit that ranks first but fails', () => {
    const { answer } = advise([short('a', -0.1), scenario('b')], ranked(['a', 0.8], ['b', 0.5]), drawn);
    expect(answer).toContain(
      'ranks first by your weights, but does not carry the plan in 90 of 100 histories',
    );
    expect(answer).not.toContain('Take');
  });

  it('says so when every scenario is beyond what the rider accepts', () => {
    const rows = ranked(['a', 0.8], ['b', 0.5]).map((row) => ({ ...row, unacceptable: ['cost' as const] }));
    expect(advise([scenario('a'), scenario('b')], rows, drawn).answer).toBe(
      'No scenario stays within what you accept. The nearest by your weights is Kit a, beyond your limit in to buy.',
    );
  });

  it('says what is nearest when no scenario carries the plan', () => {
    const { answer, why } = advise(
      [short('a', -0.4), short('b', -0.2)],
      ranked(['a', 0.8], ['b', 0.5]),
      drawn,
    );
    expect(answer).toBe(
      'No scenario carries the plan in 90 of 100 histories. The nearest is Kit b: use must be cut by 20\u202f%.',
    );
    expect(why).toContain('navigation unit');
  });

  it('says so when nothing is ever charged', () => {
    expect(advise([short('a', -1)], ranked(['a', 0]), drawn).answer).toContain(
      'No scenario keeps a must-have charged',
    );
  });

  it('calls a close call close', () => {
    const { notes } = advise([scenario('a'), scenario('b')], ranked(['a', 0.8], ['b', 0.78]), drawn);
    expect(notes).toEqual(['It is close: by your weights Kit b scores 78 of 100, the first 80.']);
  });

  it('names money it did not convert', () => {
    const mixed = scenario('a', { notConverted: [{ minor: 1250, currency: 'USD' }] });
    expect(advise([mixed], ranked(['a', 0.8]), drawn).notes).toEqual([
      'Kit a also costs 12.50\u00a0USD, which is not converted and not counted.',
    ]);
  });
});

describe('advise() within limits', () => {
  const overPrice = { limit: 'toBuy', text: 'costs 420 EUR, your limit is 300 EUR' } as const;
  const excluded = (row: ScoredRow): ScoredRow => ({ ...row, excludedBy: [overPrice] });

  it('never says take of what a limit leaves out', () => {
    const { answer } = advise(
      [scenario('a'), scenario('b')],
      ranked(['a', 0.8], ['b', 0.5]).map(excluded),
      drawn,
    );
    expect(answer).toBe(
      'No scenario stays within your limits. The nearest by your weights is Kit a: it costs 420 EUR, your limit is 300 EUR.',
    );
  });

  it('says that nothing carries the plan when only what is left out does', () => {
    const [a, b] = ranked(['a', 0.5], ['b', 0.8]) as [ScoredRow, ScoredRow];
    const { answer } = advise([short('a', -0.2), scenario('b')], [a, excluded(b)], drawn);
    expect(answer).toContain('No scenario carries the plan');
    expect(answer).toContain('The nearest is Kit a');
  });

  it('says which figure is not known', () => {
    const [a] = ranked(['a', 0.5]) as [ScoredRow];
    const { answer } = advise([scenario('a')], [{ ...a, notKnown: ['margin'] }], drawn);
    expect(answer).toContain('without energy margin');
  });
});
