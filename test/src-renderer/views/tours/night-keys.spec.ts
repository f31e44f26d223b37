import { describe, expect, it } from 'vitest';
import { nightReached } from '../../../../src-renderer/views/tours/night-keys.ts';

const count = 20;
const perRow = 7;

describe('nightReached()', () => {
  it.each([
    ['ArrowLeft', 0],
    ['ArrowUp', 6],
    ['ArrowRight', 19],
    ['ArrowDown', 13],
    ['Tab', 3],
    [' ', 3],
  ])('goes nowhere with %j from night %d', (key, place) => {
    expect(nightReached(key, place, count, perRow)).toBeNull();
  });

  it.each([
    ['ArrowLeft', 8, 7],
    ['ArrowRight', 6, 7],
    ['ArrowUp', 8, 1],
    ['ArrowDown', 8, 15],
    ['Home', 8, 0],
    ['End', 8, 19],
  ])('goes with %s from night %d to %d', (key, place, target) => {
    expect(nightReached(key, place, count, perRow)).toBe(target);
  });
});
