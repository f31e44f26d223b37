import { describe, expect, it } from 'vitest';
import { drawDailyUse } from '../../../../../src-main/model/flow/histories/daily-use.ts';
import { expectNear } from '../../../../support/near.ts';

const phone = 'phone#0';
const camera = 'camera#0';

/** Mean and standard deviation. */
function momentsOf(values: readonly number[]): { readonly mean: number; readonly deviation: number } {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, deviation: Math.sqrt(squares / values.length) };
}

describe('drawDailyUse()', () => {
  it('takes a tour without devices', () => {
    expect(drawDailyUse([], 5, 0.2, 1, 1)).toEqual([new Float32Array(0)]);
  });

  it('is the plan itself without a spread', () => {
    expect(drawDailyUse([phone, camera], 2, 0, 1, 1)).toEqual([Float32Array.of(1, 1, 1, 1)]);
  });

  it.each([0.1, 0.2, 0.5])('has a mean of 1 and a spread of %d', (spread) => {
    const days = 50;
    const histories = 800;
    const values = drawDailyUse([phone], days, spread, histories, 1981).flatMap((each) => [...each]);
    const { mean, deviation } = momentsOf(values);
    // Four standard errors of 40,000 draws.
    expectNear(mean, 1, (4 * spread) / Math.sqrt(days * histories), 'mean');
    // A deviation's standard error is sqrt((k - 1) / 4n) of it; the kurtosis k of a lognormal of spread 0.5 is 8.0: four are 2.7 %.
    expectNear(deviation, spread, 0.027 * spread, 'standard deviation');
    expect(Math.min(...values)).toBeGreaterThan(0);
  });

  it('draws each day anew', () => {
    expect(new Set(drawDailyUse([phone], 30, 0.2, 1, 1)[0]).size).toBe(30);
  });

  it('leaves a device’s use as it was when others come along', () => {
    const alone = drawDailyUse([phone], 4, 0.2, 3, 7);
    const together = drawDailyUse([camera, phone], 4, 0.2, 3, 7);
    together.forEach((both, history) => expect(both.filter((_, at) => at % 2 === 1)).toEqual(alone[history]));
  });

  it('gives two devices days of their own', () => {
    const [both] = drawDailyUse([camera, phone], 1, 0.2, 1, 7);
    expect(both![0]).not.toBe(both![1]);
  });

  it('draws the same use again from the same seed, and other use from another', () => {
    expect(drawDailyUse([phone], 5, 0.2, 3, 7)).toEqual(drawDailyUse([phone], 5, 0.2, 3, 7));
    expect(drawDailyUse([phone], 5, 0.2, 3, 7)).not.toEqual(drawDailyUse([phone], 5, 0.2, 3, 8));
  });

  it('leaves the first histories as they were when more are drawn', () => {
    expect(drawDailyUse([phone], 5, 0.2, 30, 7).slice(0, 4)).toEqual(drawDailyUse([phone], 5, 0.2, 4, 7));
  });
});
