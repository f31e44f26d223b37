import { describe, expect, it } from 'vitest';
import { upgradeMoney } from '../../../../src-main/model/judge/upgrade-money.ts';
import { eur, jpy, pricedLine } from '../../../support/priced-line.ts';

const owned = pricedLine({ itemId: 'owned', label: 'Owned', owned: 1, resale: eur(300) });

describe('the money of a change', () => {
  it('is nothing where nothing changes', () => {
    const lines = [owned, pricedLine({ itemId: 'new' })];
    expect(upgradeMoney({ before: lines, after: lines }, 'EUR')).toEqual({
      ...{ toBuy: eur(0), resale: eur(0), net: eur(0) },
      ...{ resaleUnknown: [], apart: { toBuy: [], resale: [] } },
    });
  });

  it('buys what comes in with its fitting, and takes off what owned things fetch that stay behind', () => {
    const wheel = pricedLine({ itemId: 'wheel', price: eur(9000), building: [eur(1000)] });
    const money = upgradeMoney({ before: [owned], after: [wheel] }, 'EUR');
    expect(money).toMatchObject({ toBuy: eur(10_000), resale: eur(300), net: eur(9700), resaleUnknown: [] });
  });

  it('buys the pieces beyond those owned', () => {
    const { toBuy } = upgradeMoney({ before: [owned], after: [{ ...owned, carried: 3 }] }, 'EUR');
    expect(toBuy).toEqual(eur(2000));
  });

  it('saves what need not be bought any more, and sells nothing that was never owned', () => {
    const planned = pricedLine({ itemId: 'planned', resale: eur(500) });
    expect(upgradeMoney({ before: [planned], after: [] }, 'EUR')).toMatchObject({
      ...{ toBuy: eur(-1000), resale: eur(0), net: eur(-1000) },
    });
  });

  it('names owned things of which no resale is known', () => {
    const { resale, resaleUnknown } = upgradeMoney(
      { before: [{ ...owned, resale: null }], after: [] },
      'EUR',
    );
    expect(resale).toEqual(eur(0));
    expect(resaleUnknown).toEqual(['Owned']);
  });

  it('keeps other currencies apart', () => {
    const money = upgradeMoney(
      { before: [{ ...owned, resale: jpy(200) }], after: [pricedLine({ price: jpy(900) })] },
      'EUR',
    );
    expect(money).toMatchObject({ net: eur(0), apart: { toBuy: [jpy(900)], resale: [jpy(200)] } });
  });
});
