import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { monotoneCurve, type CurvePoint } from '../../../../src-main/model/ride/monotone-curve.ts';
import { expectNear } from '../../../support/near.ts';

const anyStep = fc.record({
  on: fc.double({ min: 0.01, max: 20, noNaN: true }),
  y: fc.double({ min: -10, max: 10, noNaN: true }),
});

/** Points with rising x and any y. */
const anyPoints: fc.Arbitrary<readonly CurvePoint[]> = fc
  .array(anyStep, { minLength: 1, maxLength: 15 })
  .map((steps) => {
    let x = 0;
    return steps.map(({ on, y }) => ({ x: (x += on), y }));
  });
const anyShare = fc.double({ min: 0, max: 1, noNaN: true });

describe('monotoneCurve()', () => {
  it('is level with a single point', () => {
    const curve = monotoneCurve([{ x: 5, y: 2 }]);
    for (const x of [-100, 5, 100]) expect(curve(x)).toBe(2);
  });
  it('is level outside its points', () => {
    const curve = monotoneCurve([
      { x: 10, y: 1 },
      { x: 20, y: 4 },
    ]);
    expect(curve(0)).toBe(1);
    expect(curve(9.999)).toBe(1);
    expect(curve(20.001)).toBe(4);
    expect(curve(1000)).toBe(4);
  });
  it('is straight between two points', () => {
    const curve = monotoneCurve([
      { x: 10, y: 1 },
      { x: 20, y: 4 },
    ]);
    for (const x of [12.5, 15, 17.5]) expectNear(curve(x), 1 + 0.3 * (x - 10), 1e-12, `at ${x}`);
  });
  it('is level on a plateau, and only there', () => {
    const curve = monotoneCurve([
      { x: 0, y: 0 },
      { x: 10, y: 3 },
      { x: 20, y: 3 },
      { x: 30, y: 5 },
    ]);
    for (const x of [10, 12, 15, 18, 20]) expectNear(curve(x), 3, 1e-12, `at ${x}`);
    expect(curve(9)).toBeLessThan(3);
    expect(curve(21)).toBeGreaterThan(3);
  });
  it('turns at a peak without passing it', () => {
    const curve = monotoneCurve([
      { x: 0, y: 0 },
      { x: 10, y: 5 },
      { x: 20, y: 1 },
    ]);
    for (let x = 0; x <= 20; x += 0.25) expect(curve(x)).toBeLessThanOrEqual(5);
    expect(curve(10)).toBe(5);
  });
  it('takes the slopes of Fritsch & Butland between uneven points', () => {
    // SIAM J. Sci. Stat. Comput. 5:300-304 (1984): 1 / d = a / S1 + (1 - a) / S2 with a = (h1 + 2 h2) / (3 (h1 + h2)), so the nearer
    // point weighs more. Here d = 10 / 55 at x = 12 and 54 / 1580 at x = 20; the cubic between them reckoned outside the project.
    const curve = monotoneCurve([
      { x: 0, y: 0 },
      { x: 10, y: 1.2 },
      { x: 12, y: 2 },
      { x: 20, y: 2.8 },
      { x: 30, y: 3 },
    ]);
    expectNear(curve(13), 2.169841413, 1e-8, 'at 13');
    expectNear(curve(16), 2.547640967, 1e-8, 'at 16');
    expectNear(curve(18), 2.704732451, 1e-8, 'at 18');
  });

  it('goes through every point', () => {
    fc.assert(
      fc.property(anyPoints, (points) => {
        const curve = monotoneCurve(points);
        for (const { x, y } of points) expectNear(curve(x), y, 1e-12, `at ${x}`);
      }),
    );
  });
  it('stays between neighbouring points', () => {
    fc.assert(
      fc.property(anyPoints, anyShare, (points, share) => {
        const curve = monotoneCurve(points);
        points.slice(1).forEach((to, index) => {
          const from = points[index]!;
          const y = curve(from.x + share * (to.x - from.x));
          expect(y).toBeGreaterThanOrEqual(Math.min(from.y, to.y) - 1e-9);
          expect(y).toBeLessThanOrEqual(Math.max(from.y, to.y) + 1e-9);
        });
      }),
    );
  });
  it('only rises, or only falls, from one point to the next', () => {
    fc.assert(
      fc.property(anyPoints, anyShare, anyShare, (points, one, other) => {
        const curve = monotoneCurve(points);
        const [first, second] = [Math.min(one, other), Math.max(one, other)];
        points.slice(1).forEach((to, index) => {
          const from = points[index]!;
          const rise = curve(from.x + second * (to.x - from.x)) - curve(from.x + first * (to.x - from.x));
          expect(rise * Math.sign(to.y - from.y)).toBeGreaterThanOrEqual(-1e-9);
        });
      }),
    );
  });
});
