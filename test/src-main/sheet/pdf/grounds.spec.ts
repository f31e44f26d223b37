import { describe, expect, it } from 'vitest';
import type { Assumption } from '../../../../shared-types/comparison.ts';
import { assumptionList, cautionList, legNoteList } from '../../../../src-main/sheet/pdf/grounds.ts';
import { ink } from '../../../../src-main/sheet/pdf/look.ts';
import { comparisonFixture, scenarioFixture } from '../../../support/comparison-fixture.ts';
import { textsOf, valuesOf } from '../../../support/content-text.ts';

const rackFactor: Assumption = { name: 'Rack factor', value: '0.6', basis: 'rider', source: 'the scenario' };

describe('assumptionList', () => {
  it('is a heading alone when nothing is assumed', () => {
    expect(textsOf(assumptionList(comparisonFixture({ assumptions: [] })))).toEqual(['Assumptions']);
  });

  it('says once what several scenarios rest on', () => {
    const scenarios = (['hub', 'panel'] as const).map((method) =>
      scenarioFixture(method, { assumptions: [rackFactor] }),
    );
    const texts = textsOf(assumptionList(comparisonFixture({ scenarios, assumptions: [rackFactor] })));
    expect(texts.filter((text) => text === 'Rack factor ')).toHaveLength(1);
  });

  it('keeps two values of one name apart', () => {
    const assumptions = [rackFactor, { ...rackFactor, value: '0.8' }];
    const texts = textsOf(assumptionList(comparisonFixture({ assumptions })));
    expect(texts).toEqual(expect.arrayContaining(['0.6', '0.8']));
  });

  it('gives value, basis and source of each', () => {
    const bases = ['label', 'measured', 'default', 'rider'] as const;
    const assumptions = bases.map((basis) => ({ ...rackFactor, basis }));
    const grounds = textsOf(assumptionList(comparisonFixture({ assumptions }))).filter((text) =>
      text.startsWith(' ('),
    );
    expect(grounds).toEqual([
      ' (label; the scenario)',
      ' (measured; the scenario)',
      ' (usual value; the scenario)',
      ' (yours; the scenario)',
    ]);
  });

  it('breaks a name as long as a column anywhere, and other words only between them', () => {
    const assumptions = [{ ...rackFactor, name: 'Summer_by_the_gulf_and_back_again.gpx' }];
    expect(valuesOf(assumptionList(comparisonFixture({ assumptions })), 'wordBreak')).toEqual([
      'break-all',
      'normal',
      'normal',
    ]);
  });
});

describe('cautionList', () => {
  it('prints every caution beside an ochre bar', () => {
    const comparison = comparisonFixture();
    const list = cautionList(comparison);
    expect(textsOf(list).filter((text) => text !== '')).toEqual(['Cautions', ...comparison.cautions]);
    expect(valuesOf(list, 'fillColor')).toEqual([ink.accent]);
  });
});

describe('legNoteList', () => {
  it('is nothing where no leg has a note', () => {
    expect(legNoteList(comparisonFixture())).toEqual([]);
  });

  it('names the leg of each note, once for all scenarios', () => {
    const { legs } = scenarioFixture('panel');
    const noted = legs.map((leg) => ({ ...leg, notes: [`Mind the ${leg.leg.toLowerCase()}.`] }));
    const scenarios = (['panel', 'hub'] as const).map((method) => scenarioFixture(method, { legs: noted }));
    const texts = textsOf(legNoteList(comparisonFixture({ scenarios }))).filter((text) => text !== '');
    expect(texts).toEqual(['On the legs', 'Coast: Mind the coast.', 'Passes: Mind the passes.']);
  });
});
