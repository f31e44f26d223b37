import { describe, expect, it } from 'vitest';
import { longestNightPattern, nightKind, nights, type NightKind } from '../../../../shared-types/tour.ts';
import {
  nextNight,
  nightsWithOutlets,
  resized,
  turned,
} from '../../../../src-renderer/views/tours/night-pattern.ts';

const pattern: readonly NightKind[] = ['none', 'none', 'wall'];

describe('resized()', () => {
  it.each([0, -3, 2.5, longestNightPattern + 1, Number.NaN])(
    'keeps the pattern when its length is %d',
    (length) => {
      expect(resized(pattern, length)).toEqual(pattern);
    },
  );

  it('goes as long as the contract takes, and no longer', () => {
    const takes = (length: number): boolean =>
      nights.shape.pattern.safeParse(Array.from({ length }, () => 'none')).success;
    expect([takes(longestNightPattern), takes(longestNightPattern + 1)]).toEqual([true, false]);
  });

  it('cuts at the end and grows by nights without a wall', () => {
    expect(resized(pattern, 1)).toEqual(['none']);
    expect(resized(pattern, 5)).toEqual(['none', 'none', 'wall', 'none', 'none']);
  });
});

describe('turning a night', () => {
  it('comes round to where it began through every kind', () => {
    const seen: NightKind[] = ['none'];
    while (seen.length <= nightKind.options.length) seen.push(nextNight(seen.at(-1)!));
    expect(seen.at(-1)).toBe('none');
    expect(new Set(seen)).toEqual(new Set(nightKind.options));
  });

  it('turns one night and leaves the others', () => {
    expect(turned(['none', 'none'], 1)).toEqual(['none', nextNight('none')]);
  });
});

describe('nightsWithOutlets()', () => {
  const leg = (days: number, ...kinds: NightKind[]) => ({
    days,
    nights: { pattern: kinds, wallOutlets: 2, postOutlets: 1 },
  });

  it('counts none on a leg of no length', () => {
    expect(nightsWithOutlets(leg(Number.NaN, 'wall'))).toBe(0);
  });

  it('repeats the pattern and cuts it at the last day', () => {
    expect(nightsWithOutlets(leg(7, 'none', 'none', 'wall'))).toBe(2);
    expect(nightsWithOutlets(leg(9, 'none', 'none', 'wall'))).toBe(3);
  });

  it('counts posts as well as walls', () => {
    expect(nightsWithOutlets(leg(4, 'wall', 'electric-post'))).toBe(4);
  });
});
