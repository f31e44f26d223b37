import { describe, expect, it } from 'vitest';
import { wilsonInterval } from '../../../../src-main/model/flow/risk.ts';
import { expectNear } from '../../../support/near.ts';

describe('wilsonInterval()', () => {
  // Newcombe 1998, Statistics in Medicine 17:857-872, Table I, method 3 (score without continuity correction), printed to four
  // decimals.
  it.each([
    { seen: 81, trials: 263, low: 0.2553, high: 0.3662 },
    { seen: 15, trials: 148, low: 0.0624, high: 0.1605 },
    { seen: 0, trials: 20, low: 0, high: 0.1611 },
    { seen: 1, trials: 29, low: 0.0061, high: 0.1718 },
  ])('of $seen in $trials is $low to $high', ({ seen, trials, low, high }) => {
    const risk = wilsonInterval(seen, trials);
    expectNear(risk.share, seen / trials, 1e-12, 'share');
    expectNear(risk.low, low, 0.00005, 'low');
    expectNear(risk.high, high, 0.00005, 'high');
  });

  it('mirrors itself: what was always seen is as sure as what was never seen', () => {
    const [never, always] = [wilsonInterval(0, 20), wilsonInterval(20, 20)];
    expectNear(always.low, 1 - never.high, 1e-12, 'low');
    expect(always.high).toBe(1);
  });

  it('says little after one trial', () => {
    const { low, high } = wilsonInterval(0, 1);
    expectNear(low, 0, 1e-12, 'low');
    // z^2 / (1 + z^2) = 3.84146 / 4.84146 with z = 1.95996.
    expectNear(high, 0.79345, 0.00001, 'high');
  });

  it('narrows with more histories', () => {
    const width = (trials: number): number => {
      const { low, high } = wilsonInterval(trials / 10, trials);
      return high - low;
    };
    expect(width(1000)).toBeLessThan(width(200));
  });
});
