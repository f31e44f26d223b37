import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  diffuseRatio,
  globalOverDiffuseRatio,
  spreadUnder,
  toShares,
} from '../../../../src-main/model/sun/within-day.ts';
import { expectNear } from '../../../support/near.ts';

const sum = (values: Float64Array): number => values.reduce((total, each) => total + each, 0);
const positive = fc.double({ min: 0, max: 1000, noNaN: true });

describe('spreadUnder()', () => {
  const spread = (shares: readonly number[], most: readonly number[], total: number): Float64Array => {
    const out = new Float64Array(shares.length);
    spreadUnder(Float64Array.from(shares), Float64Array.from(most), total, out);
    return out;
  };

  it('gives nothing of nothing and nothing without shares', () => {
    expect([...spread([0.5, 0.5], [9, 9], 0)]).toEqual([0, 0]);
    expect([...spread([0, 0], [0, 0], 5)]).toEqual([0, 0]);
  });

  it('follows the shares where no bound is passed', () => {
    expect([...spread([0.25, 0.75], [9, 9], 8)]).toEqual([2, 6]);
  });

  it('moves what a bound refuses to where there is room', () => {
    expect([...spread([0.25, 0.75], [9, 4], 8)]).toEqual([4, 4]);
  });

  it('adds up exactly within the bounds, and more in all gives no part less', () => {
    const parts = fc.array(fc.tuple(positive, positive), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(parts, fc.double({ min: 0, max: 0.95, noNaN: true }), (pairs, fill) => {
        const shares = [...toShares(Float64Array.from(pairs, ([share]) => share))];
        const most = pairs.map(([, bound]) => bound);
        const all = most.reduce((total, bound) => total + bound, 0);
        fc.pre(shares.some((share) => share > 0));
        const some = spread(shares, most, fill * all);
        const more = spread(shares, most, (fill + 0.05) * all);
        expectNear(sum(some), fill * all, 1e-9 * (1 + all), 'total');
        some.forEach((part, at) => {
          expect(part).toBeLessThanOrEqual(most[at]! * (1 + 1e-12));
          expect(more[at]!).toBeGreaterThanOrEqual(part - 1e-9 * (1 + all));
        });
      }),
    );
  });
});

describe('the ratios within a day', () => {
  it('are nothing while the sun is down', () => {
    expect(diffuseRatio(-0.3, 8)).toBe(0);
  });

  it('put more of the global radiation near noon than of the diffuse', () => {
    const halfDay = Math.PI / 2;
    expect(globalOverDiffuseRatio(0, halfDay)).toBeGreaterThan(1);
    expect(globalOverDiffuseRatio(1.3, halfDay)).toBeLessThan(1);
  });
});

describe('toShares()', () => {
  it('leaves a shape without light as it is', () => {
    expect([...toShares(new Float64Array(3))]).toEqual([0, 0, 0]);
  });

  it('adds up to one', () => {
    expectNear(sum(toShares(Float64Array.of(2, 3, 7))), 1, 1e-12, 'sum of shares');
  });
});
