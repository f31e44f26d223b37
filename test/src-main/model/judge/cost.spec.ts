import { describe, expect, it } from 'vitest';
import { costOf, type PricedLine } from '../../../../src-main/model/judge/cost.ts';

const line = (changes: Partial<PricedLine>): PricedLine => ({
  itemId: 'item',
  label: 'Item',
  carried: 1,
  owned: 0,
  prices: [{ minor: 1000, currency: 'EUR' }],
  ...changes,
});

describe('costOf()', () => {
  it('costs nothing with nothing', () => {
    expect(costOf([], 'EUR')).toMatchObject({ toBuy: { minor: 0, currency: 'EUR' }, whole: { minor: 0 } });
  });

  it('counts owned items in the whole price only', () => {
    const { toBuy, whole } = costOf([line({ owned: 1 }), line({})], 'EUR');
    expect([toBuy.minor, whole.minor]).toEqual([1000, 2000]);
  });

  it('buys only what is carried beyond what is owned', () => {
    expect(costOf([line({ carried: 3, owned: 1 })], 'EUR').toBuy.minor).toBe(2000);
  });

  it('adds the wheel building to a hub', () => {
    const hub = line({
      prices: [
        { minor: 11_000, currency: 'EUR' },
        { minor: 14_000, currency: 'EUR' },
      ],
    });
    expect(costOf([hub], 'EUR')).toMatchObject({
      toBuy: { minor: 25_000 },
      lines: [{ whole: { minor: 25_000 } }],
    });
  });

  it('names other currencies apart and converts none', () => {
    const cost = costOf([line({}), line({ prices: [{ minor: 700, currency: 'JPY' }] })], 'EUR');
    expect(cost.toBuy).toEqual({ minor: 1000, currency: 'EUR' });
    expect(cost.notConverted).toEqual([{ minor: 700, currency: 'JPY' }]);
  });

  it('leaves an owned item of another currency out of what is not converted', () => {
    expect(
      costOf([line({ owned: 1, prices: [{ minor: 700, currency: 'JPY' }] })], 'EUR').notConverted,
    ).toEqual([]);
  });
});
