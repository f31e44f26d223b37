import { describe, expect, it } from 'vitest';
import { hubAt } from '../../../../../src-renderer/views/tours/leg-ride/hub-curve.ts';

const curve = [
  { speedKmh: 10, plugW: 1, onW: 4, offW: 0.5 },
  { speedKmh: 20, plugW: 3, onW: 8, offW: 1.5 },
];

describe('hubAt()', () => {
  it('is nothing for a curve of no points', () => {
    expect(hubAt([], 'plugW', 15)).toBe(0);
  });

  it('is level beyond both ends', () => {
    expect([hubAt(curve, 'plugW', 2), hubAt(curve, 'plugW', 40)]).toEqual([1, 3]);
  });

  it('is the point itself where there is one', () => {
    expect([hubAt(curve, 'onW', 10), hubAt(curve, 'onW', 20)]).toEqual([4, 8]);
  });

  it('runs straight between two points', () => {
    expect([hubAt(curve, 'plugW', 15), hubAt(curve, 'offW', 12.5)]).toEqual([2, 0.75]);
  });
});
