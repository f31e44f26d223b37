import { describe, expect, it } from 'vitest';
import type { CriterionValues } from '../../../../shared-types/comparison.ts';
import { noLimits, type Limits } from '../../../../shared-types/limits.ts';
import { exclusionsOf } from '../../../../src-main/model/judge/hard-limits.ts';
import { criterionValues } from '../../../support/score-fixture.ts';

const heavy = criterionValues({ cost: 420, grams: 1520, frontWheelGrams: 620, margin: -0.1 });
const strict: Limits = { toBuy: 300, grams: 1000, frontWheelGrams: 500, margin: 0.1, byAir: true };

function textsOf(values: CriterionValues, limits: Partial<Limits>, airborne = true): readonly string[] {
  return exclusionsOf({ values, airborne }, { ...noLimits, ...limits }, 'EUR').map(({ text }) =>
    text.replace(/[\u00a0\u202f]/gu, ' '),
  );
}

describe('exclusionsOf()', () => {
  it('leaves out nothing without a limit', () => {
    expect(exclusionsOf({ values: heavy, airborne: false }, noLimits, 'EUR')).toEqual([]);
  });

  it('says of each limit passed both figures', () => {
    expect(textsOf(heavy, strict, false)).toEqual([
      'costs 420 EUR, your limit is 300 EUR',
      'weighs 1,520 g, your limit is 1,000 g',
      'puts 620 g on the front wheel, your limit is 500 g',
      'has a margin of \u221210 %, your limit is +10 %',
      'does not fly as packed, and you travel there by air',
    ]);
    const limits = exclusionsOf({ values: heavy, airborne: false }, strict, 'EUR').map(({ limit }) => limit);
    expect(limits).toEqual(Object.keys(noLimits));
  });

  it('lets pass what is exactly at the limit', () => {
    const just = criterionValues({ cost: 300, grams: 1000, frontWheelGrams: 500, margin: 0.1 });
    expect(textsOf(just, strict)).toEqual([]);
  });

  it('takes a limit of nothing for a limit', () => {
    expect(textsOf(criterionValues({ cost: 84 }), { toBuy: 0 })).toEqual([
      'costs 84 EUR, your limit is 0 EUR',
    ]);
    expect(textsOf(criterionValues({ margin: -0.02 }), { margin: 0 })).toHaveLength(1);
  });

  it('never lets two figures that differ read alike', () => {
    expect(textsOf(criterionValues({ grams: 1000.4 }), { grams: 1000 })).toEqual([
      'weighs 1,000.4 g, your limit is 1,000 g',
    ]);
    expect(textsOf(criterionValues({ margin: 0.0996 }), { margin: 0.1 })).toEqual([
      'has a margin of +9.96 %, your limit is +10 %',
    ]);
  });

  it('does not take what is not known to be within', () => {
    expect(textsOf(criterionValues({ margin: NaN }), { margin: 0.1 })).toEqual([
      'has no known figure for "Energy margin", your limit is +10 %',
    ]);
    expect(textsOf(criterionValues({ margin: NaN }), {})).toEqual([]);
  });

  it('writes money in the currency of the settings', () => {
    const [exclusion] = exclusionsOf(
      { values: criterionValues({ cost: 4200 }), airborne: true },
      { ...noLimits, toBuy: 3000 },
      'JPY',
    );
    expect(exclusion?.text).toBe('costs 4,200\u00a0JPY, your limit is 3,000\u00a0JPY');
  });
});
