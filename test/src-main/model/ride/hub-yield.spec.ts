import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { yielding } from '../../../../src-main/model/ride/hub-yield.ts';
import { generatorWheel } from '../../../../src-main/model/ride/hub.ts';
import { expectNear } from '../../../support/near.ts';
import { anyConverter, anyHub } from '../../../support/random-ride.ts';

const anyKmh = fc.double({ min: 0, max: 90, noNaN: true });
const anyYield = fc.double({ min: 0.05, max: 1.5, noNaN: true });
/** A wheel whose plug gives 2 W at any speed, through a converter of at most 2.2 W. */
const steady = { startSpeedKmh: 8, plugW: () => 2, onW: () => 4, offW: () => 1 };

describe('a wheel with a measured yield', () => {
  it('gives no more than the converter can, however high the yield', () => {
    expectNear(yielding(steady, 1.5, 2.2).plugW(20), 2.2, 1e-12, 'at the plug, W');
  });

  it('is not held below a curve read at the plug', () => {
    expectNear(yielding(steady, 1.5, 1.7).plugW(20), 2, 1e-12, 'at the plug, W');
  });

  it('gives that share of what it promised', () => {
    expectNear(yielding(steady, 0.87, 5).plugW(20), 1.74, 1e-12, 'at the plug, W');
  });

  it('leaves start and drag as they were, at any speed', () => {
    fc.assert(
      fc.property(anyHub, anyConverter, anyYield, anyKmh, (hub, converter, share, kmh) => {
        const wheel = generatorWheel(hub, converter);
        const yielded = yielding(wheel, share, converter.outputW);
        expect(yielded.startSpeedKmh).toBe(wheel.startSpeedKmh);
        expect([yielded.onW(kmh), yielded.offW(kmh)]).toEqual([wheel.onW(kmh), wheel.offW(kmh)]);
      }),
    );
  });

  it('never gives less for a higher yield, at any speed', () => {
    fc.assert(
      fc.property(anyHub, anyConverter, anyYield, anyYield, anyKmh, (hub, converter, one, other, kmh) => {
        const wheel = generatorWheel(hub, converter);
        const plugW = (share: number): number => yielding(wheel, share, converter.outputW).plugW(kmh);
        expect(plugW(Math.max(one, other))).toBeGreaterThanOrEqual(plugW(Math.min(one, other)));
      }),
    );
  });
});
