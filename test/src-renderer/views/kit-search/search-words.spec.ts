import { describe, expect, it } from 'vitest';
import { usualPlacement, usualRules } from '../../../../shared-types/scenario.ts';
import { keptScenario } from '../../../../src-renderer/views/kit-search/kept-scenario.ts';
import {
  atLeast,
  finding,
  kitLine,
  ladderText,
  tallyText,
} from '../../../../src-renderer/views/kit-search/search-words.ts';
import { sorted } from '../../../../src-renderer/views/kit-search/sorting.ts';
import { foundKit, searchResult } from '../../support/fake-kits.ts';

describe('the words of the kit search', () => {
  it('tell a margin as what is held at least', () => {
    expect(atLeast(foundKit(), 'en')).toBe('at least +30\u202f%');
    expect(atLeast(foundKit({ margin: { value: 3, capped: true } }), 'en')).toBe('more than +300\u202f%');
  });

  it('tell a kit in a line', () => {
    const [bank, panel] = foundKit().items;
    expect(kitLine({ items: [{ ...bank!, quantity: 2 }, panel!] })).toBe('2 × 20 Ah bank; 20 W panel');
    expect(kitLine({ items: [] })).toBe('nothing at all');
  });

  it('find the lightest kit that carries the plan', () => {
    expect(finding(searchResult(), 'en')).toBe(
      '2 kits that no other beats; the lightest that carries the plan weighs 910\u00a0g and costs 84\u00a0EUR',
    );
    expect(finding(searchResult({ complete: false }), 'en')).toContain(' so far; the lightest');
    const short = foundKit({ margin: { value: -0.1, capped: false } });
    expect(finding(searchResult({ kits: [short] }), 'en')).toBe(
      '1 kit that no other beats; none carries the plan',
    );
    expect(finding(searchResult({ kits: [short], complete: false }), 'en')).toBe(
      '1 kit that no other beats so far; none carries the plan',
    );
    expect(finding(searchResult({ kits: [] }), 'en')).toBe('No kit is within your limits');
    expect(finding(searchResult({ kits: [], complete: false }), 'en')).toBe('No kit found so far');
  });

  it('say how many kits were tried, and how the others were beaten', () => {
    expect(tallyText(searchResult(), 'en')).toBe(
      '4 kits in 0.4\u00a0s: 2 walked to their margin; beaten before that: 1 hold something that does nothing, 1 have too little supply, 0 fail too often.',
    );
    const tally = { kits: 9, walked: 2, idleItem: 1, tooLittleSupply: 1, stoppedEarly: 0 };
    expect(tallyText(searchResult({ complete: false, tally }), 'en')).toContain('4 of 9 kits');
  });
});

describe('sorted()', () => {
  it('puts the most margin first, and the least of all else', () => {
    const [mix, bank] = searchResult().kits as [ReturnType<typeof foundKit>, ReturnType<typeof foundKit>];
    expect(sorted([bank, mix], 'margin')).toEqual([mix, bank]);
    for (const by of ['toBuy', 'grams', 'frontWheelGrams'] as const)
      expect(sorted([mix, bank], by)).toEqual([bank, mix]);
  });
});

describe('keptScenario()', () => {
  const like = { placement: usualPlacement, rules: usualRules };

  it('carries the kit under the placement and rules it was searched with', () => {
    expect(keptScenario(foundKit(), like)).toMatchObject({
      ...{ label: '20 Ah bank; 20 W panel', method: 'panel', ...like },
      kit: [
        { itemId: 'bank', quantity: 1 },
        { itemId: 'panel', quantity: 1 },
      ],
    });
  });

  it('cuts a long name to what a label takes', () => {
    const items = Array.from({ length: 9 }, (_, at) => ({ ...foundKit().items[0]!, itemId: `bank-${at}` }));
    expect(keptScenario(foundKit({ items }), like).label).toHaveLength(80);
  });
});

describe('ladderText()', () => {
  it('says how far apart the told margins are, and up to where', () => {
    expect(ladderText('en')).toBe(
      'they are told in steps of 5 points up to 0\u202f%, of 10 points up to +100\u202f%, of 25 points above',
    );
  });
});
