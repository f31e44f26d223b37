import { describe, expect, it } from 'vitest';
import type { ScenarioResult } from '../../../../shared-types/comparison.ts';
import { ink, methodColour } from '../../../../src-main/sheet/pdf/look.ts';
import { scorecard } from '../../../../src-main/sheet/pdf/scorecard.ts';
import { comparisonFixture, scenarioFixture } from '../../../support/comparison-fixture.ts';
import { textsOf, valuesOf } from '../../../support/content-text.ts';

function rowTexts(scenario: ScenarioResult, histories = 1): string[] {
  const { table } = scorecard(comparisonFixture({ scenarios: [scenario], histories }));
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
    const panel = scenarioFixture('panel', { flatShare: 0.58 });
    expect(rowTexts(panel)).toContain('as planned: Phone flat, day 9');
    expect(rowTexts(panel, 200)).toContain('as planned: Phone flat, day 9, in 58\u202f% of histories');
    expect(rowTexts(scenarioFixture('hub'))).toContain('as planned: none runs flat');
  });

  it('says that no limit was found when capped', () => {
    const margin = { value: 3, band: null, capped: true, limitedBy: null };
    expect(rowTexts(scenarioFixture('hub', { margin }))).toEqual(
      expect.arrayContaining(['over +300\u202f%', 'no limit found']),
    );
  });

  it('names amounts it could not convert', () => {
    const { cost } = scenarioFixture('hub');
    const notConverted = [{ minor: 12_000, currency: 'CHF' }];
    expect(rowTexts(scenarioFixture('hub', { cost: { ...cost, notConverted } }))).toContain('+ 120\u00a0CHF');
  });

  it('shows rank, price, grams, margin and limit', () => {
    expect(rowTexts(scenarioFixture('hub'))).toEqual([
      '1',
      'Generator hub',
      '3 W hub in the front wheel, 10 Ah bank',
      '264\u00a0EUR',
      'of 328\u00a0EUR',
      '714',
      '444',
      '+31\u202f%',
      'Phone, day 19',
      'as planned: none runs flat',
    ]);
  });

  it('names the method unless the label does', () => {
    expect(rowTexts(scenarioFixture('banks'))).toContain('Banks only: two 20 Ah banks, 30 W wall charger');
    expect(rowTexts(scenarioFixture('banks', { label: 'Banks only' }))).toContain(
      'two 20 Ah banks, 30 W wall charger',
    );
  });

  it('shows the band once histories are drawn', () => {
    const { margin } = scenarioFixture('panel');
    const panel = scenarioFixture('panel', { margin: { ...margin, band: { p10: -0.26, p90: -0.09 } } });
    expect(rowTexts(panel, 200)).toContain('\u221226\u202f% to \u22129\u202f%');
    expect(textsOf(scorecard(comparisonFixture({ histories: 200 })))).toContain(
      'Energy margin, 10–90 of 100',
    );
  });

  it('gives each method its colour', () => {
    const { table } = scorecard(
      comparisonFixture({ scenarios: [scenarioFixture('mix'), scenarioFixture('banks')] }),
    );
    expect(valuesOf(table.body, 'fillColor')).toEqual([methodColour.mix, methodColour.banks]);
  });
});
