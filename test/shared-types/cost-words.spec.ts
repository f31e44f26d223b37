import { describe, expect, it } from 'vitest';
import { amountLines, paidNightLines, resaleLines } from '../../shared-types/cost-words.ts';

const eur = (minor: number) => ({ minor, currency: 'EUR' });
const jpy = (minor: number) => ({ minor, currency: 'JPY' });
const locale = 'en-GB';

describe('amountLines()', () => {
  it('leaves the currency to the head of the column', () => {
    expect(amountLines(eur(123_456), [], locale)).toEqual(['1,234.56']);
  });

  it('names each other currency on a line of its own', () => {
    expect(amountLines(eur(0), [jpy(5000)], locale)).toEqual(['0', 'and 5,000\u00a0JPY']);
  });

  it('shows what comes to less than nothing with a true minus', () => {
    expect(amountLines(eur(-12), [], locale)).toEqual(['\u22120.12']);
  });
});

describe('resaleLines()', () => {
  it('says that nobody knows rather than that it fetches nothing', () => {
    expect(resaleLines(eur(0), [], locale)).toEqual(['not known']);
  });

  it('names what is known, in any currency', () => {
    expect(resaleLines(eur(5000), [], locale)).toEqual(['50']);
    expect(resaleLines(eur(0), [jpy(700)], locale)).toEqual(['0', 'and 700\u00a0JPY']);
  });
});

describe('paidNightLines()', () => {
  it('says so where no number of them is enough', () => {
    expect(paidNightLines(null, locale)).toEqual(['every night is not enough']);
  });

  it('prices no nights where none are needed', () => {
    expect(paidNightLines({ nights: 0, cost: eur(0) }, locale)).toEqual(['none']);
  });

  it('counts nights that have no price', () => {
    expect(paidNightLines({ nights: 1, cost: null }, locale)).toEqual(['1 night', 'no price set']);
  });

  it('names the currency of the price', () => {
    expect(paidNightLines({ nights: 4, cost: jpy(12_000) }, locale)).toEqual(['4 nights', '12,000\u00a0JPY']);
  });
});
