import { describe, expect, it } from 'vitest';
import type { Comparison, ScenarioResult } from '../../../../shared-types/comparison.ts';
import type { Table } from '../../../../src-main/sheet/content/content.ts';
import { scorecardSection } from '../../../../src-main/sheet/content/scorecard.ts';
import { comparisonFixture, scenarioFixture } from '../../../support/comparison-fixture.ts';
import { scoredRow } from '../../../support/score-fixture.ts';
import { matterOf } from '../../../support/sheet-matter.ts';
import { cellsOf, rowTexts, tableOf } from '../../../support/sheet-section.ts';

// By Unicode name: U+202F NARROW NO-BREAK SPACE, U+00A0 NO-BREAK SPACE, U+2212 MINUS SIGN.
const percentSign = '\u202f%';
const wh = '\u00a0Wh';
const minus = '\u2212';

function scorecard(comparison: Partial<Comparison>): Table {
  return tableOf(scorecardSection(matterOf(comparison)));
}

/** What stands below the label of the only scenario. */
function standing(scenario: ScenarioResult, scores?: Comparison['scores']): readonly string[] {
  return cellsOf(scorecard({ scenarios: [scenario], ...(scores === undefined ? {} : { scores }) }), 0)[1]!
    .under!;
}

describe('scorecardSection', () => {
  it('is a head alone when nothing was compared', () => {
    const { columns, rows } = scorecard({ scenarios: [] });
    expect(rows).toEqual([]);
    expect(columns.map(({ head }) => head)).toEqual([
      'Rank, score',
      'Scenario',
      'To buy, EUR',
      'Carried, g',
      'On the front wheel, g',
      'Energy margin, 90 of 100 histories',
      'Histories with a flat must-have',
      'Lowest reserve',
    ]);
  });

  it('marks the figure that fails and no other', () => {
    const failing = scorecard({}).rows.flatMap(({ cells }, row) =>
      [...cells.keys()].filter((at) => cells[at]!.fails === true).map((at) => [row, at]),
    );
    // The third scenario, its energy margin.
    expect(failing).toEqual([[2, 5]]);
  });

  it('leaves rank and score empty for a scenario that was not scored', () => {
    const [rank] = cellsOf(scorecard({ scenarios: [scenarioFixture('hub')], scores: [] }), 0);
    expect(rank).toMatchObject({ text: '', under: [] });
  });

  it('names amounts it could not convert', () => {
    const { cost } = scenarioFixture('hub');
    const notConverted = [
      { minor: 12_000, currency: 'CHF' },
      { minor: 900, currency: 'JPY' },
    ];
    const hub = scenarioFixture('hub', { cost: { ...cost, notConverted } });
    expect(cellsOf(scorecard({ scenarios: [hub] }), 0)[2]!.under).toEqual([
      'of 328',
      'and 120\u00a0CHF',
      'and 900\u00a0JPY',
    ]);
  });

  it('says why a scenario is left out', () => {
    const scenario = scenarioFixture('hub');
    const excludedBy = [{ limit: 'toBuy', text: 'costs 264 EUR, your limit is 200 EUR' }] as const;
    const scores = [scoredRow(scenario.id, 0.8, { excludedBy, topsis: null })];
    expect(standing(scenario, scores)).toContain('Left out: costs 264 EUR, your limit is 200 EUR.');
  });

  it('names what a scenario is dominated by', () => {
    const [hub, banks] = [scenarioFixture('hub'), scenarioFixture('banks')];
    const scores = [
      scoredRow(hub.id, 0.8),
      scoredRow(banks.id, 0.4, { rank: 2, dominatedBy: hub.id, topsis: { closeness: 0.4, rank: 2 } }),
    ];
    const table = scorecard({ scenarios: [hub, banks], scores });
    expect(cellsOf(table, 0)[1]!.under).not.toContainEqual(expect.stringContaining('Dominated'));
    expect(cellsOf(table, 1)[1]!.under).toEqual([
      'Banks only: two 20 Ah banks, 30 W wall charger',
      'Second opinion: rank 2, closeness 0.40.',
      'Dominated by Generator hub: at least as good in all that counts.',
    ]);
  });

  it('says that no limit was found when capped', () => {
    const margin = { value: 3, capped: true, limitedBy: null, usual: 3, usualCapped: true };
    const hub = scenarioFixture('hub', { margin });
    expect(cellsOf(scorecard({ scenarios: [hub] }), 0)[5]).toMatchObject({
      text: `more than +300${percentSign}`,
      under: ['no limit found'],
    });
  });

  it('lists the scenarios in order of rank, their scores found by scenario and not by place', () => {
    const { scores } = comparisonFixture();
    const ranked = scorecard({ scores: scores.toReversed() });
    expect(ranked.rows.map(({ cells: [rank, label] }) => [rank!.text, rank!.under, label!.text])).toEqual([
      ['1', ['0.74'], 'Generator hub'],
      ['2', ['0.63'], 'Two banks'],
      ['3', ['0.52'], 'Panel and buffer bank'],
    ]);
  });

  it('shows price, grams, margin, risk and reserve of each', () => {
    const reserveWh = { p10: 12, p50: 41, p90: 58 };
    const table = scorecard({ scenarios: [scenarioFixture('hub', { reserveWh })] });
    // By hand from the kit: 195 + 69 EUR to buy of 328; 310 + 86 + 182 + 92 + 44 g, of it 310 + 43 + 91 in front.
    expect(rowTexts(table)[0]).toEqual([
      ...['1', 'Generator hub', '264', '714', '444', `+31${percentSign}`, 'none of 200', `41${wh}`],
    ]);
    const under = cellsOf(table, 0).map((cell) => cell.under ?? []);
    expect(under.slice(2)).toEqual([
      ['of 328'],
      [],
      [],
      [`+44${percentSign} in half of them`, 'limited by Phone, day 19'],
      ['0 to 2 of 100'],
      ['12 to 58'],
    ]);
  });

  it('says which device runs flat first, and when', () => {
    const table = scorecard({ scenarios: [scenarioFixture('panel')] });
    expect(cellsOf(table, 0)[5]!.text).toBe(`${minus}18${percentSign}`);
    expect(cellsOf(table, 0)[6]).toMatchObject({
      text: '58 of 100',
      under: ['51 to 65', 'the phone first, on day 9; at the earliest day 6'],
    });
  });

  it('shows the extras that count, and those only', () => {
    const scenario = scenarioFixture('banks');
    const parts = { cost: 1, minutesLost: 0.9, daysWithoutWall: 0.8 };
    const extras = ['Minutes lost a day: 1', 'Days without a wall: 6'];
    expect(standing(scenario, [scoredRow(scenario.id, 0.5, { parts })])).toEqual(
      expect.arrayContaining(extras),
    );
    expect(standing(scenario).join()).not.toMatch(/Minutes lost|Days without/u);
  });

  it('names the method unless the label does', () => {
    const carries = 'two 20 Ah banks, 30 W wall charger';
    expect(standing(scenarioFixture('banks'))[0]).toBe(`Banks only: ${carries}`);
    expect(standing(scenarioFixture('banks', { label: 'Banks only' }))[0]).toBe(carries);
  });

  it('heads the margin with its confidence', () => {
    const heads = scorecard({ confidence: 0.95 }).columns.map(({ head }) => head);
    expect(heads).toContain('Energy margin, 95 of 100 histories');
  });

  it('draws a small axis below cost, grams, front wheel and margin', () => {
    const drawn = cellsOf(scorecard({}), 0).map((cell) => cell.drawn !== undefined);
    expect(drawn).toEqual([false, false, true, true, true, true, false, false]);
  });
});
