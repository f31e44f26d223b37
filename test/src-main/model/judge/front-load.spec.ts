import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { balancedShare, usualFrontLoad } from '../../../../shared-types/front-load.ts';
import { frontShares } from '../../../../src-main/model/judge/front-load.ts';
import { expectNear } from '../../../support/near.ts';

describe('balancedShare()', () => {
  it('is half for a load half-way between the axles, and nothing over the rear axle', () => {
    expect([balancedShare(0.54, 1.08), balancedShare(0, 1.08), balancedShare(1.08, 1.08)]).toEqual([
      0.5, 0, 1,
    ]);
  });

  it('lifts the front wheel behind the rear axle, and passes 1 ahead of the front one', () => {
    expect(balancedShare(-0.2, 1)).toBeLessThan(0);
    expect(balancedShare(1.2, 1)).toBeGreaterThan(1);
  });

  it('adds up to the whole load with the share of the rear wheel, for any load and wheelbase', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.5, max: 1.6, noNaN: true }),
        fc.double({ min: 0.8, max: 1.4, noNaN: true }),
        (aheadM, wheelbaseM) => {
          // The rear wheel sees the same bicycle from the other end.
          const rear = balancedShare(wheelbaseM - aheadM, wheelbaseM);
          expectNear(balancedShare(aheadM, wheelbaseM) + rear, 1, 1e-12, 'both wheels');
        },
      ),
      { seed: 9, numRuns: 300, endOnFailure: true },
    );
  });
});

describe('frontShares()', () => {
  it('counts what is in the front wheel whole, whatever the bicycle', () => {
    expect(frontShares({ ...usualFrontLoad, wheelbaseM: 1.4 })['front-wheel']).toBe(1);
  });

  // By hand: 1.03, 0.86, 0.54, 0.05 and 0.45 m over 1.08 m.
  it('balances the usual places', () => {
    const shares = frontShares(usualFrontLoad);
    expectNear(shares.fork, 0.9537, 5e-5, 'fork');
    expectNear(shares.handlebar, 0.7963, 5e-5, 'handlebar');
    expectNear(shares.frame, 0.5, 5e-5, 'frame');
    expectNear(shares['rear-rack'], 0.0463, 5e-5, 'rear rack');
    expectNear(shares.body, 0.4167, 5e-5, 'rider');
  });

  it('believes the rider rather than the balance, a share of nothing too', () => {
    const ownShare = { ...usualFrontLoad.ownShare, handlebar: 0.7, rearRack: 0 };
    const shares = frontShares({ ...usualFrontLoad, ownShare });
    expect([shares.handlebar, shares['rear-rack'], shares.frame]).toEqual([0.7, 0, 0.5]);
  });
});
