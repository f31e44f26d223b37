import { describe, expect, it } from 'vitest';
import type { ScenarioResult } from '../../../../shared-types/comparison.ts';
import { ink, methodColour } from '../../../../src-main/sheet/pdf/look.ts';
import { scorecard } from '../../../../src-main/sheet/pdf/scorecard.ts';
import { comparisonFixture, scenarioFixture } from '../../../support/comparison-fixture.ts';
import { textsOf, valuesOf } from '../../../support/content-text.ts';
import { scoredRow } from '../../../support/score-fixture.ts';

function rowTexts(scenario: ScenarioResult): string[] {
  const { table } = scorecard(comparisonFixture({ scenarios: [scenario] }));
  return textsOf(table.body[1]).filter((text) => text !== '');
}

describe('scorecard', () => {
  it('is a head alone when nothing was compared', () => {
    expect(scorecard(comparisonFixture({ scenarios: [] })).table.body).toHaveLength(1);
  });

  it('prints red only the figure that fails', () => {
    const { table } = scorecard(comparisonFixture());
    const failing = table.body.map((row) =>
      valuesOf(row, 'color').filter((colour) => colour === ink.failing),
    );
    expect(failing.map((colours) => colours.length)).toEqual([0, 0, 0, 1]);
  });

  it('says which device runs flat as planned', () => {
    expect(rowTexts(scenarioFixture('panel'))).toContain(
      'as planned a must-have runs flat in 58 of 100 histories (51 to 65), the phone first, on day 9; at the earliest day 6',
    );
    expect(rowTexts(scenarioFixture('hub'))).toContain(
      'as planned a must-have runs flat in none of 200 histories (0 to 2 of 100)',
    );
  });

  it('says that no limit was found when capped', () => {
    const margin = { value: 3, capped: true, limitedBy: null, usual: 3, usualCapped: true };
    expect(rowTexts(scenarioFixture('hub', { margin }))).toEqual(
      expect.arrayContaining(['more than +300\u202f%', 'no limit found']),
    );
  });

  it('names amounts it could not convert', () => {
    const { cost } = scenarioFixture('hub');
    const notConverted = [{ minor: 12_000, currency: 'CHF' }];
    expect(rowTexts(scenarioFixture('hub', { cost: { ...cost, notConverted } }))).toContain('+ 120\u00a0CHF');
  });

  it('shows rank, price, grams, margin and limit', () => {
    const reserveWh = { p10: 12, p50: 41, p90: 58 };
    expect(rowTexts(scenarioFixture('hub', { reserveWh, spilledShare: 0.03 }))).toEqual([
      '1',
      'Generator hub',
      '3 W hub in the front wheel, 10 Ah bank',
      '264\u00a0EUR',
      'of 328\u00a0EUR',
      '714',
      '444',
      '+31\u202f%',
      '+44\u202f% in half',
      'limited by Phone, day\u00a019',
      'as planned a must-have runs flat in none of 200 histories (0 to 2 of 100)',
      'lowest reserve 41\u00a0Wh (12 to 58)',
      '3\u202f% of what the hub gives is spilled',
    ]);
  });

  it('shows the extras that count', () => {
    const scenario = scenarioFixture('banks');
    const scores = [
      scoredRow(scenario.id, 0.5, { parts: { cost: 1, minutesLost: 0.9, daysWithoutWall: 0.8 } }),
    ];
    const { table } = scorecard(comparisonFixture({ scenarios: [scenario], scores }));
    const texts = textsOf(table.body[1]);
    expect(texts).toContain('Minutes lost a day: 1');
    expect(texts).toContain('Days without a wall: 6');
  });

  it('says why a scenario is left out', () => {
    const scenario = scenarioFixture('hub');
    const excludedBy = [{ limit: 'toBuy', text: 'costs 264 EUR, your limit is 200 EUR' }] as const;
    const scores = [scoredRow(scenario.id, 0.8, { excludedBy, topsis: null })];
    const { table } = scorecard(comparisonFixture({ scenarios: [scenario], scores }));
    expect(textsOf(table.body[1])).toContain('Left out: costs 264 EUR, your limit is 200 EUR.');
  });

  it('names the method unless the label does', () => {
    expect(rowTexts(scenarioFixture('banks'))).toContain('Banks only: two 20 Ah banks, 30 W wall charger');
    expect(rowTexts(scenarioFixture('banks', { label: 'Banks only' }))).toContain(
      'two 20 Ah banks, 30 W wall charger',
    );
  });

  it('heads the margin with its confidence', () => {
    const texts = textsOf(scorecard(comparisonFixture({ confidence: 0.95 })));
    expect(texts).toContain('Energy margin, 95 of 100 histories');
  });

  it('gives each method its colour', () => {
    const { table } = scorecard(
      comparisonFixture({ scenarios: [scenarioFixture('mix'), scenarioFixture('banks')] }),
    );
    expect(valuesOf(table.body, 'fillColor')).toEqual([methodColour.mix, methodColour.banks]);
  });
});
