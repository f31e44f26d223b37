import { describe, expect, it } from 'vitest';
import {
  extraEnergy,
  gramsChange,
  marginChange,
  minutesChange,
  moneyWords,
  nightsChange,
  riskChange,
  scoreChange,
  whyNotYet,
} from '../../../../src-renderer/views/upgrade-check/change-words.ts';
import { pairedMarginOf, upgradeFixture, upgradeOnTour } from '../../../support/upgrade-fixture.ts';

const tour = upgradeOnTour('Alps');
const eur = (minor: number) => ({ minor, currency: 'EUR' });

describe('why nothing can be checked yet', () => {
  const line = { itemId: 'panel', quantity: 1 };
  const question = { base: { as: 'owned' as const }, add: [line], remove: [], tourIds: ['alps'] };

  it('is for want of a change, then of a tour', () => {
    expect(whyNotYet({ ...question, add: [] })).toMatch(/comes in or what goes out/);
    expect(whyNotYet({ ...question, tourIds: [] })).toMatch(/at least one tour/);
    expect(whyNotYet(question)).toBeNull();
  });
});

describe('the figures before and after a change', () => {
  it('say both and the difference', () => {
    expect(scoreChange(tour, 'en-GB')).toEqual({ from: '50', to: '70', difference: '+20' });
    expect(minutesChange(tour, 'en-GB')).toEqual({
      ...{ from: '2\u00a0min', to: '3.5\u00a0min', difference: '+1.5\u00a0min' },
    });
    expect(nightsChange(tour, 'en-GB')).toEqual({ from: '4', to: '1', difference: '−3' });
  });

  it('say the difference of margins with its interval', () => {
    expect(marginChange(tour, 'en-GB')).toEqual({
      ...{ from: '−12\u202f%', to: '+8\u202f%', difference: '20 points more (15 to 26)' },
    });
  });

  it('say how many histories are mended and spoiled', () => {
    expect(riskChange(tour, 200, 'en-GB')).toEqual({
      ...{ from: '20 of 100', to: '5 of 100', difference: '32 mended, 2 spoiled of 200' },
    });
    expect(riskChange({ ...tour, mended: 0, spoiled: 0 }, 200, 'en-GB').difference).toBe('');
  });

  it('say that a wall every night is not enough', () => {
    const change = nightsChange({ ...tour, wallNights: { before: null, after: 2 } }, 'en-GB');
    expect(change).toEqual({ from: 'more than all', to: '2', difference: '' });
  });

  it('say no difference where both read alike', () => {
    expect(scoreChange({ ...tour, score: { before: 0.501, after: 0.499 } }, 'en-GB').difference).toBe('');
  });

  it('write grams with what they were', () => {
    expect(gramsChange({ before: 900, after: 1300 }, 'en-GB')).toBe(
      '+400\u00a0g, from 900\u00a0g to 1,300\u00a0g',
    );
  });
});

describe('the money of a change in words', () => {
  const { money } = upgradeFixture();

  it('is the price alone where nothing is sold', () => {
    expect(moneyWords({ money }, 'en-GB')).toBe('84\u00a0EUR');
  });

  it('takes a resale off, and names other currencies', () => {
    const apart = { toBuy: [{ minor: 900, currency: 'JPY' }], resale: [] };
    const sold = { ...money, resale: eur(600), net: eur(7800), apart };
    expect(moneyWords({ money: sold }, 'en-GB')).toBe(
      '78\u00a0EUR: 84\u00a0EUR to buy less 6\u00a0EUR of resale; not converted and not counted: 900\u00a0JPY to buy',
    );
  });
});

describe('the use carried more', () => {
  it('is signed, and known as a least where the margin is capped', () => {
    expect(extraEnergy(tour, 'en-GB')).toBe('+5\u00a0Wh');
    const capped = pairedMarginOf({ cappedAfter: true });
    expect(extraEnergy({ ...tour, margin: capped }, 'en-GB')).toBe('at least +5\u00a0Wh');
    expect(extraEnergy({ ...tour, extraWhPerDay: Number.NaN }, 'en-GB')).toBe('not known');
  });
});
