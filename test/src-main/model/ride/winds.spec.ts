import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Wind } from '../../../../shared-types/tour.ts';
import { windsOf } from '../../../../src-main/model/ride/winds.ts';
import { expectNear } from '../../../support/near.ts';

const calm = [{ headwindMs: 0, share: 1 }];
const anyWindKmh = fc.double({ min: 0.001, max: 60, noNaN: true });
const anyWind: fc.Arbitrary<Wind> = fc.oneof(
  fc.constant({ as: 'calm' } as const),
  fc.record({
    as: fc.constant('along'),
    headwindKmh: fc.double({ min: -60, max: 60, noNaN: true }),
  } as const),
  fc.record({ as: fc.constant('around'), windKmh: fc.double({ min: 0, max: 60, noNaN: true }) } as const),
);

/** Mean over the shares of the distance. */
function mean(windKmh: number, of: (headwindMs: number) => number): number {
  return windsOf({ as: 'around', windKmh }).reduce(
    (sum, { headwindMs, share }) => sum + share * of(headwindMs),
    0,
  );
}

describe('windsOf()', () => {
  it('is one calm share without wind, however it is said', () => {
    expect(windsOf({ as: 'calm' })).toEqual(calm);
    expect(windsOf({ as: 'along', headwindKmh: 0 })).toEqual(calm);
    expect(windsOf({ as: 'around', windKmh: 0 })).toEqual(calm);
  });
  it('takes a wind along the road whole, with its sign', () => {
    const [against] = windsOf({ as: 'along', headwindKmh: 36 });
    const [behind] = windsOf({ as: 'along', headwindKmh: -36 });
    expectNear(against!.headwindMs, 10, 1e-12, 'against, m/s');
    expectNear(behind!.headwindMs, -10, 1e-12, 'behind, m/s');
  });
  it('shares out the whole distance', () => {
    fc.assert(
      fc.property(anyWind, (wind) => {
        const whole = windsOf(wind).reduce((sum, { share }) => sum + share, 0);
        expectNear(whole, 1, 1e-12, 'shares');
      }),
    );
  });
  it('has no wind along the road in the mean of all sides', () => {
    fc.assert(
      fc.property(anyWindKmh, (windKmh) => {
        expectNear(
          mean(windKmh, (headwindMs) => headwindMs),
          0,
          1e-12,
          'mean, m/s',
        );
      }),
    );
  });
  it('has half the square of the wind along the road', () => {
    // The mean of the squared cosine over all directions is a half; eight even directions give it exactly.
    fc.assert(
      fc.property(anyWindKmh, (windKmh) => {
        const windMs = windKmh / 3.6;
        expectNear(
          mean(windKmh, (headwindMs) => headwindMs ** 2),
          windMs ** 2 / 2,
          1e-9,
          'mean square, m2/s2',
        );
      }),
    );
  });
  it('blows from no side harder than the wind', () => {
    fc.assert(
      fc.property(anyWindKmh, (windKmh) => {
        for (const { headwindMs } of windsOf({ as: 'around', windKmh }))
          expect(Math.abs(headwindMs)).toBeLessThanOrEqual((windKmh / 3.6) * (1 + 1e-12));
      }),
    );
  });
});
