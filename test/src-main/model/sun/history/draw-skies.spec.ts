import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawSkies } from '../../../../../src-main/model/sun/history/draw-skies.ts';
import type { ExpectedDay, SkyLaw } from '../../../../../src-main/model/sun/history/sky-law.ts';
import { expectNear } from '../../../../support/near.ts';

const laws: readonly SkyLaw[] = [{ method: 'distribution', persistence: 0.29 }, { method: 'transitions' }];
const days = (count: number, mean: number, most = 1): ExpectedDay[] =>
  Array.from({ length: count }, () => ({ mean, most }));
const mean = (values: ArrayLike<number>): number =>
  Array.from(values).reduce((sum, value) => sum + value, 0) / values.length;

/** Correlation of each day with the next about the long-run mean. */
function lagOne(clearness: Float64Array, count: number): number {
  const centre = mean(clearness);
  let [together, alone] = [0, 0];
  clearness.forEach((value, at) => {
    alone += (value - centre) ** 2;
    if ((at + 1) % count !== 0) together += (value - centre) * (clearness[at + 1]! - centre);
  });
  return together / alone;
}

describe.each(laws)('drawSkies() by $method', (law) => {
  it('draws the same weather again from the same seed', () => {
    const draw = (seed: number): Float64Array => drawSkies(days(20, 0.5), law, 5, seed).clearness;
    expect(draw(3)).toEqual(draw(3));
    expect(draw(3)).not.toEqual(draw(4));
  });

  it('leaves the first histories as they were when more are drawn', () => {
    const few = drawSkies(days(12, 0.4), law, 3, 1).clearness;
    expect(drawSkies(days(12, 0.4), law, 30, 1).clearness.slice(0, few.length)).toEqual(few);
  });

  it('leaves the days before as they were when a tour grows longer', () => {
    const short = drawSkies(days(12, 0.4), law, 1, 1).clearness;
    expect(drawSkies(days(30, 0.4), law, 1, 1).clearness.slice(0, 12)).toEqual(short);
  });

  it.each([0.2, 0.3, 0.41, 0.5, 0.62, 0.7, 0.74])('keeps a monthly mean of %d to 1 %%', (wanted) => {
    // 120,000 days: the standard error of the mean is below 0.1 % of it.
    const { clearness } = drawSkies(days(30, wanted), law, 4000, 11);
    expectNear(mean(clearness), wanted, 0.01 * wanted, 'mean clearness');
  });

  it('keeps the mean under a low cloudless sky too', () => {
    const { clearness } = drawSkies(days(30, 0.4, 0.52), law, 3000, 5);
    expectNear(mean(clearness), 0.4, 0.004, 'mean clearness');
    expect(Math.max(...clearness)).toBeLessThanOrEqual(0.52);
  });

  it('is finite and within its bounds for any months', () => {
    const anyDay = fc.record({
      mean: fc.double({ min: 0, max: 1, noNaN: true }),
      most: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(anyDay, { minLength: 1, maxLength: 40 }), (expected) => {
        drawSkies(expected, law, 3, 9).clearness.forEach((value, at) => {
          expect(value).toBeGreaterThanOrEqual(0);
          expect(value).toBeLessThanOrEqual(expected[at % expected.length]!.most + 1e-12);
        });
      }),
    );
  });

  it('makes dull days follow on each other', () => {
    const { clearness } = drawSkies(days(60, 0.5), law, 500, 2);
    expect(lagOne(clearness, 60)).toBeGreaterThan(0.15);
  });

  it('changes the month on its day', () => {
    const { clearness } = drawSkies([...days(10, 0.25), ...days(10, 0.7)], law, 2000, 6);
    const half = (from: number): number =>
      mean(clearness.filter((_, at) => at % 20 >= from && at % 20 < from + 10));
    expectNear(half(0), 0.25, 0.005, 'mean of the dull month');
    expectNear(half(10), 0.7, 0.007, 'mean of the clear month');
  });
});

describe('persistence', () => {
  it.each([0, 0.14, 0.29, 0.41, 0.9])('of %d shows in the weather', (persistence) => {
    const { clearness } = drawSkies(days(200, 0.5), { method: 'distribution', persistence }, 300, 8);
    // Bending the normal values into the distribution takes a few hundredths off; 60,000 days err by 0.004.
    expectNear(lagOne(clearness, 200), persistence, 0.04, 'lag-1 correlation');
  });

  it('makes longer runs of dull days but not more dull days', () => {
    const runs = (persistence: number): { readonly runs: number; readonly dull: number } => {
      const { clearness } = drawSkies(days(60, 0.5), { method: 'distribution', persistence }, 1000, 3);
      let [count, dull] = [0, 0];
      clearness.forEach((value, at) => {
        if (value >= 0.3) return;
        dull += 1;
        if (at % 60 === 0 || clearness[at - 1]! >= 0.3) count += 1;
      });
      return { runs: dull / count, dull: dull / clearness.length };
    };
    expect(runs(0.6).runs).toBeGreaterThan(1.25 * runs(0).runs);
    expectNear(runs(0.6).dull, runs(0).dull, 0.01, 'share of dull days');
  });
});
