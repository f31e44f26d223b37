import { describe, expect, it } from 'vitest';
import {
  findingOf,
  inOrderOfFate,
  originOf,
  partsOf,
} from '../../../../src-renderer/views/exchange/exchange-words.ts';
import { exchangeEntry } from '../../support/fake-exchange.ts';

describe('partsOf()', () => {
  it('says of each reason where, what is allowed and what is there', () => {
    const reasons = [
      { path: 'massG', allowed: 'a number from 0 to 20,000 g', got: '"heavy"' },
      { path: '', allowed: 'no field named colour', got: '{}' },
      { path: 'kit.3.itemId', allowed: 'the id of an item', got: '"gone"' },
    ];
    expect(partsOf(exchangeEntry({ fate: 'refused', reasons, more: 4 }))).toEqual([
      'Mass of one: allowed is a number from 0 to 20,000 g; the file has "heavy"',
      'The whole entry: allowed is no field named colour; the file has {}',
      'kit 3 itemId: allowed is the id of an item; the file has "gone"',
      'and 4 more',
    ]);
  });

  it('says of each change how it is here and how in the file, in the words and units of its form', () => {
    const changes = [
      { path: 'massG', before: 380, after: 1400 },
      { path: 'state', before: 'owned', after: 'retired' },
      { path: 'health', before: 0.8, after: 0.75 },
      { path: 'measuredDeliverableWh.value', before: null, after: 58 },
      { path: 'chargesWhileServing', before: true, after: false },
      { path: 'capacity.as', before: 'wh', after: 'mah' },
      { path: 'notes', before: '', after: 'x'.repeat(50) },
    ];
    expect(partsOf(exchangeEntry({ fate: 'changed', changes }))).toEqual([
      'Mass of one: 380\u00a0g → 1,400\u00a0g',
      'State: Owned → Retired',
      'Health: 80\u202f% → 75\u202f%',
      'Measured delivery: none → 58\u00a0Wh',
      'Charges while it serves: yes → no',
      'Label capacity: Watt-hours → Milliampere-hours',
      `Notes:  → ${'x'.repeat(40)}…`,
    ]);
  });

  it('says that a new item looks like another', () => {
    expect(partsOf(exchangeEntry({ twin: 'inventory' }))).toEqual(['looks like one you have']);
    expect(partsOf(exchangeEntry({ twin: 'file' }))).toEqual(['looks like one above']);
  });
});

describe('findingOf() and originOf()', () => {
  it('count what a file holds and say whence it is', () => {
    const entries = [exchangeEntry(), exchangeEntry({ fate: 'same' }), exchangeEntry({ fate: 'refused' })];
    const preview = { madeOn: '2027-04-18', program: '0.1.0', entries };
    expect(findingOf(preview)).toBe('1 new, 1 refused, 1 as here');
    expect(originOf(preview)).toMatch(/^Made on .*2027.* by version 0\.1\.0$/);
    expect([
      findingOf({ ...preview, entries: [] }),
      originOf({ ...preview, madeOn: null, program: null }),
    ]).toEqual(['The file holds nothing', '']);
  });
});

describe('inOrderOfFate()', () => {
  it('puts what must be decided on first, and what is here already last', () => {
    const fates = ['same', 'new', 'refused', 'changed', 'new'] as const;
    const entries = fates.map((fate, place) => ({ ...exchangeEntry(), fate, place }));
    expect(inOrderOfFate(entries).map(({ fate, place }) => `${fate} ${place}`)).toEqual([
      ...['refused 2', 'changed 3', 'new 1', 'new 4', 'same 0'],
    ]);
  });
});
