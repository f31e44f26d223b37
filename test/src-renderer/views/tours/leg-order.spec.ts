import { describe, expect, it } from 'vitest';
import { moved } from '../../../../src-renderer/views/tours/leg-order.ts';

describe('moved()', () => {
  it.each([
    [0, -1],
    [2, 1],
    [7, -1],
  ] as const)('leaves the order alone when %d cannot move by %d', (place, by) => {
    expect(moved(['a', 'b', 'c'], place, by)).toEqual(['a', 'b', 'c']);
  });

  it('swaps an entry with its neighbour', () => {
    expect(moved(['a', 'b', 'c'], 0, 1)).toEqual(['b', 'a', 'c']);
    expect(moved(['a', 'b', 'c'], 2, -1)).toEqual(['a', 'c', 'b']);
  });
});
