import { usualMoney } from '../../shared-types/money-settings.ts';
import type { Money } from '../../shared-types/money.ts';
import type { MoneyGround, PricedLine } from '../../src-main/model/judge/priced-line.ts';

export const eur = (minor: number): Money => ({ minor, currency: 'EUR' });
export const jpy = (minor: number): Money => ({ minor, currency: 'JPY' });

/** An item of 10 EUR to buy, which serves five years and fetches nothing known. */
export const pricedLine = (changes: Partial<PricedLine> = {}): PricedLine => ({
  itemId: 'item',
  label: 'Item',
  carried: 1,
  owned: 0,
  price: eur(1000),
  building: [],
  resale: null,
  lifeYears: 5,
  ...changes,
});

/** Euros without interest, 30 touring days a year, walls at no price. */
export const moneyGround = (changes: Partial<MoneyGround['money']> = {}): MoneyGround => ({
  currency: 'EUR',
  money: { ...usualMoney('EUR'), ...changes },
});
