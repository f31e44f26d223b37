import { describe, expect, it } from 'vitest';
import { costOf } from '../../../../src-main/model/judge/cost.ts';
import { eur, jpy, moneyGround, pricedLine as line } from '../../../support/priced-line.ts';

const ground = moneyGround();

describe('costOf()', () => {
  it('costs nothing with nothing', () => {
    expect(costOf([], ground)).toEqual({
      toBuy: eur(0),
      building: eur(0),
      whole: eur(0),
      resale: eur(0),
      perTourDay: eur(0),
      paidNights: null,
      notConverted: [],
      apart: { building: [], resale: [], perTourDay: [] },
      lines: [],
    });
  });

  it('counts owned items in the whole price only', () => {
    const { toBuy, whole } = costOf([line({ owned: 1 }), line()], ground);
    expect([toBuy, whole]).toEqual([eur(1000), eur(2000)]);
  });

  it('buys only what is carried beyond what is owned', () => {
    expect(costOf([line({ carried: 3, owned: 1 })], ground).toBuy).toEqual(eur(2000));
  });

  it('names other currencies apart and converts none', () => {
    const cost = costOf([line(), line({ price: jpy(700) })], ground);
    expect(cost.toBuy).toEqual(eur(1000));
    expect(cost.notConverted).toEqual([jpy(700)]);
  });

  it('leaves an owned item of another currency out of what is not converted', () => {
    expect(costOf([line({ owned: 1, price: jpy(700) })], ground).notConverted).toEqual([]);
  });

  it('gives each line its price in its own currency', () => {
    const { lines } = costOf([line({ price: jpy(700), carried: 2 })], ground);
    expect(lines).toMatchObject([{ quantity: 2, owned: false, whole: jpy(1400) }]);
  });
});

describe('the wheel building of a hub', () => {
  const hub = line({ price: eur(11_000), building: [eur(4500), eur(3500), eur(6000)] });

  it('is part of what is to buy, and named by itself', () => {
    expect(costOf([hub], ground)).toMatchObject({
      toBuy: eur(25_000),
      building: eur(14_000),
      lines: [{ whole: eur(25_000) }],
    });
  });

  it('is paid already for a wheel that is owned', () => {
    expect(costOf([{ ...hub, owned: 1 }], ground)).toMatchObject({ building: eur(0), whole: eur(25_000) });
  });

  it('keeps its own currency', () => {
    const cost = costOf([{ ...hub, building: [eur(4500), jpy(9000)] }], ground);
    expect(cost).toMatchObject({ building: eur(4500), apart: { building: [jpy(9000)] } });
    expect(cost.notConverted).toEqual([jpy(9000)]);
  });
});

describe('the resale', () => {
  it('counts every piece carried, owned or not, and nothing where it is not known', () => {
    const lines = [line({ carried: 2, owned: 1, resale: eur(300) }), line()];
    expect(costOf(lines, ground).resale).toEqual(eur(600));
  });

  it('names other currencies apart', () => {
    const cost = costOf([line({ resale: jpy(400) })], ground);
    expect([cost.resale, cost.apart.resale]).toEqual([eur(0), [jpy(400)]]);
  });
});

describe('the nights that need a wall', () => {
  it('are not told where no number of them is enough', () => {
    expect(costOf([], ground).paidNights).toBeNull();
  });

  it('are counted without a price where the settings hold none', () => {
    expect(costOf([], ground, 4).paidNights).toEqual({ nights: 4, cost: null });
  });

  it('cost what the rider says, in the currency of that price', () => {
    expect(costOf([], moneyGround({ wallNight: jpy(3000) }), 4).paidNights).toEqual({
      nights: 4,
      cost: jpy(12_000),
    });
    expect(costOf([], moneyGround({ wallNight: eur(2500) }), 0).paidNights).toEqual({
      nights: 0,
      cost: eur(0),
    });
  });
});
