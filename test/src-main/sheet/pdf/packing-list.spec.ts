import { describe, expect, it } from 'vitest';
import type { ScenarioResult } from '../../../../shared-types/comparison.ts';
import { packingLists } from '../../../../src-main/sheet/pdf/packing-list.ts';
import { comparisonFixture, scenarioFixture } from '../../../support/comparison-fixture.ts';
import { textsOf, valuesOf } from '../../../support/content-text.ts';

function textsFor(...scenarios: readonly ScenarioResult[]): string[] {
  return textsOf(packingLists(comparisonFixture({ scenarios }))).filter((text) => text !== '');
}

describe('packingLists', () => {
  it('says when a scenario packs nothing', () => {
    const mass = { carriedG: 0, frontWheelG: 0, lines: [] };
    expect(textsFor(scenarioFixture('banks', { mass })).slice(1)).toEqual([
      'Two banks',
      '0\u00a0g',
      'nothing',
    ]);
  });

  it('lets a list longer than a page be torn', () => {
    const { mass } = scenarioFixture('banks');
    const kept = (count: number) => {
      const lines = Array.from({ length: count }, () => mass.lines[0]!);
      const banks = scenarioFixture('banks', { mass: { ...mass, lines } });
      return valuesOf(packingLists(comparisonFixture({ scenarios: [banks] })), 'unbreakable');
    };
    expect(kept(80)).not.toContain(true);
    expect(kept(8)).not.toContain(false);
  });

  it('lists label and grams and marks what to buy', () => {
    expect(textsFor(scenarioFixture('panel')).slice(1)).toEqual([
      'Panel and buffer bank',
      '1,031\u00a0g',
      '20 W folding panel (to buy)',
      '540',
      '20 Ah bank, 18 W in',
      '355',
      '30 W wall charger, two ports',
      '92',
      '2 × Short charging cable',
      '44',
    ]);
  });

  it('says what rides on the front wheel', () => {
    expect(textsFor(scenarioFixture('hub'))).toContain('714\u00a0g, of it 444\u00a0g on the front wheel');
  });

  it('shows a true minus for grams saved', () => {
    const { mass } = scenarioFixture('hub');
    const lines = mass.lines.slice(0, 1).map((line) => ({ ...line, netG: -35 }));
    expect(textsFor(scenarioFixture('hub', { mass: { ...mass, lines } }))).toContain('\u221235');
  });

  it('sets three lists abreast, all equally wide', () => {
    const four = (['hub', 'banks', 'panel', 'mix'] as const).map((method) => scenarioFixture(method));
    const rows = valuesOf(packingLists(comparisonFixture({ scenarios: four })), 'columns');
    expect(rows).toHaveLength(2);
    expect(rows.map((columns) => (columns as unknown[]).length)).toEqual([3, 3]);
  });
});
