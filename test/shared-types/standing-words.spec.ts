import { describe, expect, it } from 'vitest';
import type { ScoredRow } from '../../shared-types/comparison.ts';
import { countedExtras, extraText, opinionTexts, standingTexts } from '../../shared-types/standing-words.ts';
import { comparisonFixture, scenarioFixture } from '../support/comparison-fixture.ts';
import { criterionValues, scoredRow } from '../support/score-fixture.ts';

const scenarios = [scenarioFixture('hub'), scenarioFixture('banks')];
const [hub, banks] = ['scenario-hub', 'scenario-banks'];

function textsOf(changes: Partial<ScoredRow>): readonly string[] {
  return standingTexts(scoredRow(hub, 0.8, changes), { scenarios });
}

describe('standingTexts()', () => {
  it('says nothing of a scenario that nothing tells against', () => expect(textsOf({})).toEqual([]));

  it('says what is left out, unknown, unaccepted and dominated, what weighs most first', () => {
    const excludedBy = [
      { limit: 'toBuy', text: 'costs 420 EUR, your limit is 300 EUR' },
      { limit: 'byAir', text: 'does not fly as packed, and you travel there by air' },
    ] as const;
    expect(
      textsOf({
        excludedBy,
        topsis: null,
        notKnown: ['margin'],
        unacceptable: ['cost', 'grams'],
        dominatedBy: banks,
      }),
    ).toEqual([
      'Left out: costs 420 EUR, your limit is 300 EUR; does not fly as packed, and you travel there by air.',
      'Not known: energy margin.',
      'Beyond what you accept: to buy, grams carried.',
      'Dominated by Two banks: at least as good in all that counts.',
    ]);
  });
});

describe('opinionTexts()', () => {
  const row = scoredRow(hub, 0.8, { topsis: { closeness: 0.607, rank: 2 } });

  it('gives rank and closeness', () => {
    const scores = [row, scoredRow(banks, 0.5)];
    expect(opinionTexts(row, { scores }, 'en-GB')).toEqual(['Second opinion: rank 2, closeness 0.61.']);
  });

  it('says nothing of what is left out, nor of one alone in the choice', () => {
    const out = scoredRow(banks, 0.5, { topsis: null });
    expect(opinionTexts(row, { scores: [row, out] })).toEqual([]);
    expect(opinionTexts(out, { scores: [row, out] })).toEqual([]);
  });
});

describe('countedExtras()', () => {
  it('are none of no scenario, and none while none counts', () => {
    expect(countedExtras({ scores: [] })).toEqual([]);
    expect(countedExtras(comparisonFixture())).toEqual([]);
  });

  it('are those that have scored', () => {
    const parts = { cost: 1, risk: 1, daysWithoutWall: 0 };
    expect(countedExtras({ scores: [scoredRow('a', 1, { parts })] })).toEqual(['daysWithoutWall']);
  });
});

describe('extraText()', () => {
  it('is the figure, or a dash where it is not known', () => {
    const values = criterionValues({ minutesLost: 12.4, daysWithoutWall: NaN });
    const scenario = scenarioFixture('hub', { values });
    expect([extraText(scenario, 'minutesLost'), extraText(scenario, 'daysWithoutWall')]).toEqual(['12', '–']);
  });
});
