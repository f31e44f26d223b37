import { describe, expect, it } from 'vitest';
import type { Assumption } from '../../../../shared-types/comparison.ts';
import { assumptionSection, cautionSection } from '../../../../src-main/sheet/content/grounds.ts';
import { comparisonFixture, scenarioFixture } from '../../../support/comparison-fixture.ts';
import { listsOf } from '../../../support/sheet-section.ts';

const rackFactor: Assumption = { name: 'Rack factor', value: '0.6', basis: 'rider', source: 'the scenario' };

function assumed(...changes: Parameters<typeof comparisonFixture>) {
  return listsOf(assumptionSection(comparisonFixture(...changes))).flatMap(({ items }) => items);
}

describe('assumptionSection', () => {
  it('lists nothing when nothing is assumed', () => {
    expect(assumed({ assumptions: [] })).toEqual([]);
  });

  it('keeps two values of one name apart', () => {
    expect(assumed({ assumptions: [rackFactor, { ...rackFactor, value: '0.8' }] })).toEqual([
      'Rack factor: 0.6 (yours: the scenario)',
      'Rack factor: 0.8 (yours: the scenario)',
    ]);
  });

  it('says once what several rest on, and whose it is where not all do', () => {
    const scenarios = [
      scenarioFixture('hub', { assumptions: [{ ...rackFactor, value: '0.5' }] }),
      scenarioFixture('panel', { assumptions: [rackFactor] }),
      scenarioFixture('mix', { assumptions: [rackFactor] }),
    ];
    expect(assumed({ scenarios, assumptions: [] })).toEqual([
      'Rack factor: 0.5 (yours: the scenario; Generator hub)',
      'Rack factor: 0.6 (yours: the scenario; Panel and buffer bank, Hub with a panel)',
    ]);
  });

  it('names the basis of each', () => {
    const assumptions = (['label', 'measured', 'default', 'rider'] as const).map((basis) => ({
      ...rackFactor,
      basis,
    }));
    expect(assumed({ assumptions }).map((text) => /\((.*):/u.exec(text)?.[1])).toEqual([
      'label',
      'measured',
      'usual value',
      'yours',
    ]);
  });
});

describe('cautionSection', () => {
  it('lists every caution as one', () => {
    const comparison = comparisonFixture();
    expect(listsOf(cautionSection(comparison))).toMatchObject([
      { look: 'caution', items: comparison.cautions },
    ]);
  });
});
