import { describe, expect, it } from 'vitest';
import {
  countedWh,
  fallBetween,
  fullnessOfShare,
  quotient,
  times,
} from '../../../../src-main/model/field-log/cells.ts';
import { shareOfLights } from '../../../../shared-types/stop-plan.ts';

describe('how full a store was', () => {
  it('is exact at both ends of a gauge and rounded between', () => {
    expect(fullnessOfShare(1)).toEqual({ low: 1, high: 1 });
    expect(fullnessOfShare(0)).toEqual({ low: 0, high: 0 });
    expect(fullnessOfShare(0.5)).toEqual({ low: 0.495, high: 0.505 });
    expect(fullnessOfShare(0.998).high).toBe(1);
  });

  it('falls from full to one of four lights by three quarters to all', () => {
    expect(fallBetween(fullnessOfShare(1), shareOfLights(1, 4))).toEqual({ low: 0.75, high: 1 });
  });

  it('may not have fallen at all while the same lights are lit', () => {
    expect(fallBetween(shareOfLights(3, 4), shareOfLights(3, 4))).toEqual({ low: 0, high: 0.25 });
  });
});

describe('a quotient of cells', () => {
  it('has no upper bound where the fall may be nothing', () => {
    expect(quotient(countedWh(10), { low: 0, high: 0.25 }).high).toBe(Infinity);
  });

  it('takes the far ends', () => {
    const { low, high } = quotient({ low: 9, high: 11 }, { low: 0.5, high: 1 });
    expect([low, high]).toEqual([9, 22]);
    expect(times({ low, high }, 2)).toEqual({ low: 18, high: 44 });
  });
});
