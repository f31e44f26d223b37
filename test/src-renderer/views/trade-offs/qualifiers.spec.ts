import { describe, expect, it } from 'vitest';
import type { Cost, CostLine, EnergyMargin, LegYield } from '../../../../shared-types/comparison.ts';
import {
  costQualifiers,
  gramsQualifiers,
  marginQualifiers,
  minutesADay,
  riskQualifiers,
} from '../../../../src-renderer/views/trade-offs/qualifiers.ts';
import { demoComparison, demoResult } from '../../support/demo-comparison.ts';

const euros = (major: number) => ({ minor: major * 100, currency: 'EUR' });

function line(owned: boolean, price: number): CostLine {
  return { itemId: 'a', label: 'A', quantity: 1, owned, whole: euros(price) };
}

function cost(change: Partial<Cost>): Cost {
  const nothing = { toBuy: euros(0), whole: euros(0), notConverted: [], lines: [] };
  return { ...demoResult('demo-banks').cost, ...nothing, ...change };
}

describe('costQualifiers()', () => {
  it('never calls what is priced in another currency owned', () => {
    const texts = costQualifiers(
      cost({ notConverted: [{ minor: 5000, currency: 'JPY' }], lines: [line(false, 50)] }),
      'en-GB',
    );
    expect(texts).toEqual(['and 5,000\u00a0JPY']);
  });

  it('says nothing of a kit that holds nothing', () => {
    expect(costQualifiers(cost({}))).toEqual([]);
  });

  it('says when all is owned', () => {
    expect(costQualifiers(cost({ whole: euros(129), lines: [line(true, 129)] }))).toEqual(['all owned']);
  });

  it('sets the price of the whole kit beside what is to buy', () => {
    const part = cost({ toBuy: euros(84), whole: euros(129), lines: [line(true, 45), line(false, 84)] });
    expect(costQualifiers(part, 'en-GB')).toEqual(['of 129']);
  });

  it('repeats no figure when everything is to buy', () => {
    const all = cost({ toBuy: euros(84), whole: euros(84), lines: [line(false, 84)] });
    expect(costQualifiers(all)).toEqual([]);
  });
});

const leg = (days: number, massMinutes: number, dragMinutes: number): LegYield => ({
  ...demoResult('demo-hub').legs[0]!,
  days,
  massMinutes,
  dragMinutes,
});

describe('minutesADay()', () => {
  it('is nothing on a tour of no days', () => {
    expect(minutesADay([], 'dragMinutes')).toBe(0);
  });

  it('is the mean of the days, not of the legs', () => {
    const legs = [leg(9, 2, 10), leg(1, 12, 0)];
    expect(minutesADay(legs, 'dragMinutes')).toBe(9);
    expect(minutesADay(legs, 'massMinutes')).toBe(3);
  });
});

describe('gramsQualifiers()', () => {
  const plain = (...minutes: [number, number]): string =>
    gramsQualifiers([leg(5, ...minutes)], 'en-GB')
      .join('; ')
      .replaceAll('\u00a0', ' ');

  it('leaves unsaid what is less than felt', () => {
    expect(plain(0.4, 0.4)).toBe('');
    expect(plain(-2, 0)).toBe('');
  });

  it.each([
    ['grams alone', 2.6, 0, 'costs 3 min a day'],
    ['drag alone', 0.1, 4.2, 'drag costs 4 min a day'],
    ['grams and drag apart', 2.6, 8.4, 'costs 3 min a day, its drag 8 min more'],
  ])('says what is lost by %s', (_, mass, drag, text) => {
    expect(plain(mass, drag)).toBe(text);
  });
});

describe('marginQualifiers()', () => {
  const margin = {
    ...{ value: 0.34, capped: false, limitedBy: { device: 'Phone', day: 9 } },
    ...{ usual: 0.52, usualCapped: false },
  };
  const said = (change: Partial<EnergyMargin>): readonly string[] =>
    marginQualifiers(
      demoResult('demo-panel', { margin: { ...margin, ...change } }),
      demoComparison(),
      'en-GB',
    );

  it('says how sure it is, what is usual, and what limits it', () => {
    expect(said({})).toEqual([
      'in 90 of 100 histories',
      '+52\u202f% in half of them',
      'limited by Phone, day 9',
    ]);
  });

  it('names the limit of a margin below the plan alike', () => {
    expect(said({ value: -0.18, usual: -0.02 })).toEqual([
      'in 90 of 100 histories',
      '\u22122\u202f% in half of them',
      'limited by Phone, day 9',
    ]);
  });

  it('says when no limit was found', () => {
    expect(said({ value: 3, capped: true, limitedBy: null, usual: 3, usualCapped: true })).toEqual([
      'in 90 of 100 histories',
      'no limit found',
    ]);
  });

  it('is silent on a limit that is not known', () => {
    expect(said({ limitedBy: null })).toHaveLength(2);
  });
});

describe('riskQualifiers()', () => {
  const reserveWh = { p10: 12, p50: 41, p90: 58 };

  it('names what runs flat first before the reserve', () => {
    const firstShort = { device: 'Phone', day: 9, earliestDay: 6 };
    expect(riskQualifiers(demoResult('demo-panel', { firstShort, reserveWh }), 'en-GB')).toEqual([
      'the phone first, on day 9; at the earliest day 6',
      'lowest reserve 41\u00a0Wh (12 to 58)',
    ]);
  });

  it('gives the reserve alone where nothing runs flat', () => {
    expect(riskQualifiers(demoResult('demo-panel', { firstShort: null, reserveWh }), 'en-GB')).toEqual([
      'lowest reserve 41\u00a0Wh (12 to 58)',
    ]);
  });
});
