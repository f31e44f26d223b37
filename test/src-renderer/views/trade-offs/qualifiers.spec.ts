import { describe, expect, it } from 'vitest';
import type { Cost, CostLine, LegYield } from '../../../../shared-types/comparison.ts';
import {
  costQualifier,
  gramsQualifier,
  marginQualifier,
  minutesADay,
} from '../../../../src-renderer/views/trade-offs/qualifiers.ts';
import { demoResult } from '../../support/demo-comparison.ts';

const euros = (major: number) => ({ minor: major * 100, currency: 'EUR' });

function line(owned: boolean, price: number): CostLine {
  return { itemId: 'a', label: 'A', quantity: 1, owned, whole: euros(price) };
}

function cost(change: Partial<Cost>): Cost {
  return { toBuy: euros(0), whole: euros(0), notConverted: [], lines: [], ...change };
}

describe('costQualifier()', () => {
  it('never calls what is priced in another currency owned', () => {
    const text = costQualifier(
      cost({ notConverted: [{ minor: 5000, currency: 'JPY' }], lines: [line(false, 50)] }),
      'en-GB',
    );
    expect(text).toBe('and 5,000\u00a0JPY');
  });

  it('says nothing of a kit that holds nothing', () => {
    expect(costQualifier(cost({}))).toBe('');
  });

  it('says when all is owned', () => {
    expect(costQualifier(cost({ whole: euros(129), lines: [line(true, 129)] }))).toBe('all owned');
  });

  it('sets the price of the whole kit beside what is to buy', () => {
    const part = cost({ toBuy: euros(84), whole: euros(129), lines: [line(true, 45), line(false, 84)] });
    expect(costQualifier(part, 'en-GB')).toBe('of 129');
  });

  it('repeats no figure when everything is to buy', () => {
    const all = cost({ toBuy: euros(84), whole: euros(84), lines: [line(false, 84)] });
    expect(costQualifier(all)).toBe('');
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

describe('gramsQualifier()', () => {
  const plain = (...minutes: [number, number]): string =>
    gramsQualifier([leg(5, ...minutes)], 'en-GB').replaceAll('\u00a0', ' ');

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

describe('marginQualifier()', () => {
  const phone = { device: 'Phone', day: 9 };
  const margin = { value: 0.31, band: null, capped: false, limitedBy: phone };

  it('names what fails when the plan is not carried', () => {
    const failing = demoResult('demo-banks', {
      margin: { ...margin, value: -0.18 },
      firstShort: { device: 'Navigation unit', day: 11 },
    });
    expect(marginQualifier(failing)).toBe('Navigation unit runs flat on day 11');
  });

  it('names the limit when a failing run has no first', () => {
    const failing = demoResult('demo-banks', { margin: { ...margin, value: -0.18 }, firstShort: null });
    expect(marginQualifier(failing)).toBe('Phone runs flat on day 9');
  });

  it('names the limit of a margin that holds', () => {
    expect(marginQualifier(demoResult('demo-panel', { margin, firstShort: null }))).toBe(
      'limited by Phone, day 9',
    );
  });

  it('says when no limit was found', () => {
    const capped = { ...margin, value: 3, capped: true, limitedBy: null };
    expect(marginQualifier(demoResult('demo-panel', { margin: capped }))).toBe('no limit found');
  });

  it('gives the band before the limit where there is one', () => {
    const banded = { ...margin, band: { p10: -0.02, p90: 0.58 } };
    expect(marginQualifier(demoResult('demo-panel', { margin: banded, firstShort: null }), 'en-GB')).toBe(
      '\u22122 to +58\u202f%, limited by Phone, day 9',
    );
  });
});
