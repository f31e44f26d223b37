import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  clearestDay,
  clearnessAt,
  distributionOf,
  dullestClearness,
  meanClearness,
} from '../../../../../src-main/model/sun/history/clearness-distribution.ts';
import { expectNear } from '../../../../support/near.ts';
import { shareBelow } from '../../../../support/share-below.ts';

const anyMean = fc.double({ min: 0, max: 1, noNaN: true });
const anyMost = fc.double({ min: 0, max: 1, noNaN: true });
const anyShare = fc.double({ min: 0, max: 1, noNaN: true });

describe('distributionOf()', () => {
  it('keeps the mean of any month exactly, up to its bound', () => {
    fc.assert(
      fc.property(anyMean, anyMost, (mean, most) => {
        const distribution = distributionOf(mean, most);
        const held = Math.min(mean, most, clearestDay(mean));
        expectNear(meanClearness(distribution), held, 1e-6, 'mean clearness');
      }),
    );
  });

  it('draws no day above its bound or below zero', () => {
    fc.assert(
      fc.property(anyMean, anyMost, anyShare, (mean, most, share) => {
        const clearness = clearnessAt(distributionOf(mean, most), share);
        expect(clearness).toBeGreaterThanOrEqual(0);
        expect(clearness).toBeLessThanOrEqual(most + 1e-12);
      }),
    );
  });

  it.each([0, 0.03, dullestClearness])('makes every day alike where the month is as dull as %d', (mean) => {
    const distribution = distributionOf(mean, 0.75);
    expect([0, 0.5, 1].map((share) => clearnessAt(distribution, share))).toEqual([mean, mean, mean]);
  });

  it('makes every day cloudless where the mean asks for more', () => {
    const distribution = distributionOf(0.9, 0.6);
    expect([0, 1].map((share) => clearnessAt(distribution, share))).toEqual([0.6, 0.6]);
  });

  it('bends to the clear side at a high mean and to the dull at a low one', () => {
    expect(distributionOf(0.6, 1).gamma).toBeGreaterThan(0);
    expect(distributionOf(0.3, 1).gamma).toBeLessThan(0);
  });
});

describe('shareBelow() and clearnessAt()', () => {
  it('undo each other', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.12, max: 0.74, noNaN: true }), anyShare, (mean, share) => {
        const distribution = distributionOf(mean, 1);
        expectNear(shareBelow(distribution, clearnessAt(distribution, share)), share, 1e-7, 'share of days');
      }),
    );
  });

  it('rise from none to all', () => {
    const distribution = distributionOf(0.5, 1);
    expect(shareBelow(distribution, 0.01)).toBe(0);
    expect(shareBelow(distribution, 0.99)).toBe(1);
    const shares = [0.1, 0.3, 0.5, 0.7].map((clearness) => shareBelow(distribution, clearness));
    expect(shares.toSorted((a, b) => a - b)).toEqual(shares);
  });

  it('are a straight line where the distribution is level', () => {
    const level = { dullest: 0.1, clearest: 0.5, gamma: 0 };
    expectNear(clearnessAt(level, 0.25), 0.2, 1e-12, 'clearness');
    expectNear(shareBelow(level, 0.2), 0.25, 1e-12, 'share');
    expectNear(meanClearness(level), 0.3, 1e-12, 'mean');
  });
});
