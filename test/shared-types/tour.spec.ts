import { describe, expect, it } from 'vitest';
import { mostNights, nightOf, nights, type NightKind } from '../../shared-types/tour.ts';

const kinds: NightKind[] = ['none', 'electric-post', 'wall'];

describe('nights', () => {
  const takes = (length: number): boolean =>
    nights.shape.kinds.safeParse(Array.from({ length }, () => 'none')).success;

  it('are at least one and at most those of the longest tour', () => {
    expect([0, 1, mostNights, mostNights + 1].map(takes)).toEqual([false, true, true, false]);
  });
});

describe('nightOf()', () => {
  it('has no wall after the end of a list', () => {
    expect([2, 3, 365].map((night) => nightOf({ by: 'list', kinds }, night))).toEqual([
      'wall',
      'none',
      'none',
    ]);
  });

  it('begins a pattern anew after its end', () => {
    const seen = [0, 1, 2, 3, 4, 5, 365].map((night) => nightOf({ by: 'pattern', kinds }, night));
    expect(seen).toEqual(['none', 'electric-post', 'wall', 'none', 'electric-post', 'wall', 'wall']);
  });
});
