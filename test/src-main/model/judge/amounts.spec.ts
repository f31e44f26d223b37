import { describe, expect, it } from 'vitest';
import { amountsIn } from '../../../../src-main/model/judge/amounts.ts';

const eur = (minor: number) => ({ minor, currency: 'EUR' });
const jpy = (minor: number) => ({ minor, currency: 'JPY' });

describe('amountsIn()', () => {
  it('is nothing for no prices', () => {
    expect(amountsIn([], 'EUR')).toEqual({ total: eur(0), notConverted: [] });
  });

  it('adds up one currency and names the others apart', () => {
    expect(amountsIn([eur(1), jpy(500), eur(2), jpy(20)], 'EUR')).toEqual({
      total: eur(3),
      notConverted: [jpy(520)],
    });
  });

  it('leaves out other currencies that come to nothing', () => {
    expect(amountsIn([eur(1), jpy(0)], 'EUR').notConverted).toEqual([]);
  });
});
