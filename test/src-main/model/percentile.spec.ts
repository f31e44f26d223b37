import { describe, expect, it } from 'vitest';
import { percentile } from '../../../src-main/model/percentile.ts';

describe('percentile()', () => {
  it('takes a single value for every share', () => {
    expect([0, 0.5, 1].map((share) => percentile([4], share))).toEqual([4, 4, 4]);
  });

  it('reaches from the least to the most', () => {
    expect(percentile([1, 2, 9], 0)).toBe(1);
    expect(percentile([1, 2, 9], 1)).toBe(9);
  });

  it('goes straight between neighbours', () => {
    expect(percentile([0, 10], 0.25)).toBe(2.5);
    expect(percentile([1, 2, 9], 0.5)).toBe(2);
  });
});
