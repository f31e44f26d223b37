import { describe, expect, it } from 'vitest';
import type { ScenarioResult } from '../../../../shared-types/comparison.ts';
import { packingSection } from '../../../../src-main/sheet/content/packing.ts';
import { comparisonFixture, scenarioFixture } from '../../../support/comparison-fixture.ts';
import { rowTexts, tableOf, tablesOf } from '../../../support/sheet-section.ts';

function packing(...scenarios: readonly ScenarioResult[]) {
  return packingSection(comparisonFixture({ scenarios }));
}

describe('packingSection', () => {
  it('says when a scenario packs nothing', () => {
    const mass = { carriedG: 0, frontWheelG: 0, lines: [] };
    expect(rowTexts(tableOf(packing(scenarioFixture('banks', { mass }))))).toEqual([['All of it', '', '0']]);
  });

  it('shows a true minus for grams saved', () => {
    const { mass } = scenarioFixture('hub');
    const lines = mass.lines.slice(0, 1).map((line) => ({ ...line, netG: -35 }));
    const [first] = rowTexts(tableOf(packing(scenarioFixture('hub', { mass: { ...mass, lines } }))));
    expect(first!.at(-1)).toBe('\u221235');
  });

  it('lists pieces, what is to buy, where each rides and its grams', () => {
    expect(rowTexts(tableOf(packing(scenarioFixture('panel'))))).toEqual([
      ['20 W folding panel (to buy)', 'Rear rack', '540'],
      ['20 Ah bank, 18 W in', 'Frame', '355'],
      ['30 W wall charger, two ports', 'Rear rack', '92'],
      ['2\u00a0× Short charging cable', 'Rear rack', '44'],
      ['All of it', '', '1,031'],
    ]);
  });

  it('sums what the front wheel carries, where it carries anything', () => {
    const { rows } = tableOf(packing(scenarioFixture('hub')));
    const sums = rows.filter(({ heads }) => heads === true);
    expect(sums.map(({ cells }) => cells.map(({ text }) => text))).toEqual([
      ['All of it', '', '714'],
      ['Of it on the front wheel', '', '444'],
    ]);
    expect(rowTexts(tableOf(packing(scenarioFixture('hub'))))[0]).toEqual([
      ...['3 W generator hub, built into a wheel (to buy)', 'In the front wheel', '310'],
    ]);
  });

  it('sets the scenarios’ lists beside each other, each under its label', () => {
    const section = packing(scenarioFixture('hub'), scenarioFixture('banks'));
    expect(section.blocks[0]!.as).toBe('abreast');
    expect(tablesOf(section).map(({ title }) => title)).toEqual(['Generator hub', 'Two banks']);
  });
});
