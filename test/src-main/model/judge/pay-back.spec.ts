import { describe, expect, it } from 'vitest';
import type { Money } from '../../../../shared-types/money.ts';
import { payBackOf, type PayBackGround } from '../../../../src-main/model/judge/pay-back.ts';
import { eur, jpy } from '../../../support/priced-line.ts';

const priced = (net: Money): PayBackGround['money'] => ({ net, apart: { toBuy: [], resale: [] } });
const ground: PayBackGround = {
  money: priced(eur(8000)),
  wallNights: { before: 5, after: 1 },
  tourDays: 20,
  wallNight: eur(2500),
};

describe('the days of touring that pay a change back', () => {
  it.each<[string, Partial<PayBackGround>, RegExp]>([
    ['nothing is paid', { money: priced(eur(0)) }, /nothing has to be paid back/i],
    [
      'a part is paid in another currency',
      { money: { net: eur(0), apart: { toBuy: [jpy(900)], resale: [] } } },
      /another currency/,
    ],
    ['no price of a night is set', { wallNight: eur(0) }, /no price of a night/],
    ['the night is priced in another currency', { wallNight: jpy(3000) }, /priced in JPY, the change in EUR/],
    [
      'no number of walls was enough before',
      { wallNights: { before: null, after: 1 } },
      /no nights to count/,
    ],
    [
      'no number of walls is enough after',
      { wallNights: { before: 3, after: null } },
      /With it, a wall every night/,
    ],
    ['no night is saved', { wallNights: { before: 2, after: 2 } }, /saves no night/],
    ['more nights are needed', { wallNights: { before: 2, after: 3 } }, /saves no night/],
  ])('are none where %s, with the reason', (_, change, reason) => {
    const { days, text } = payBackOf({ ...ground, ...change });
    expect(days).toBeNull();
    expect(text).toMatch(reason);
  });

  it('are the cost over what the nights saved cost a day', () => {
    // 4 nights at 25 EUR in 20 days are 5 EUR a day: 80 EUR take 16 days.
    expect(payBackOf(ground)).toEqual({
      days: 16,
      text: '4 nights with a wall saved in 20 days, at 25\u00a0EUR each.',
    });
  });

  it('are whole days, a begun one counted', () => {
    expect(payBackOf({ ...ground, money: priced(eur(8001)) }).days).toBe(17);
  });
});
