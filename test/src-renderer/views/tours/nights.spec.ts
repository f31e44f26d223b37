import { describe, expect, it } from 'vitest';
import { mostNights, nightKind, nights, type NightKind, type Nights } from '../../../../shared-types/tour.ts';
import {
  kindsFor,
  nextNight,
  nightsShown,
  nightsWithOutlets,
  resized,
  turned,
} from '../../../../src-renderer/views/tours/nights.ts';

const threeNights: NightKind[] = ['none', 'none', 'wall'];

const given = (by: Nights['by'], ...kinds: NightKind[]): Nights => ({
  by,
  kinds,
  wallOutlets: 2,
  postOutlets: 1,
});

const noLengths = [0, -3, 2.5, mostNights + 1, Number.NaN];

describe('resized()', () => {
  it.each(noLengths)('keeps the nights when their number is %d', (length) => {
    expect(resized(threeNights, length)).toEqual(threeNights);
  });

  it('goes as long as the contract takes', () => {
    expect(nights.shape.kinds.safeParse(resized(threeNights, mostNights)).success).toBe(true);
    expect(resized(threeNights, mostNights)).toHaveLength(mostNights);
  });

  it('cuts at the end and grows by nights without a wall', () => {
    expect(resized(threeNights, 1)).toEqual(['none']);
    expect(resized(threeNights, 5)).toEqual(['none', 'none', 'wall', 'none', 'none']);
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

  it('fills a list up to a night beyond its end', () => {
    expect(turned(['wall'], 3)).toEqual(['wall', 'none', 'none', nextNight('none')]);
  });

  it('can turn the last night of the longest tour', () => {
    expect(turned(['wall'], mostNights - 1)).toHaveLength(mostNights);
  });
});

describe('nightsShown()', () => {
  it.each(noLengths)('has no night of a list for %d days', (days) => {
    expect(nightsShown(given('list', 'wall'), days)).toEqual([]);
  });

  it('has each night of the leg, those a list misses without a wall', () => {
    expect(nightsShown(given('list', 'wall'), 3)).toEqual(['wall', 'none', 'none']);
  });

  it('hides what a list says of nights after the leg', () => {
    expect(nightsShown(given('list', 'none', 'wall', 'wall'), 2)).toEqual(['none', 'wall']);
  });

  it('has the pattern once, however long the leg', () => {
    expect(nightsShown(given('pattern', ...threeNights), 60)).toEqual(threeNights);
  });
});

describe('kindsFor()', () => {
  it('lets a list begin as the pattern gave it', () => {
    const list = kindsFor('list', given('pattern', ...threeNights), 5);
    expect(list).toEqual(['none', 'none', 'wall', 'none', 'none']);
  });

  it('keeps the pattern while the leg has no days to list', () => {
    expect(kindsFor('list', given('pattern', ...threeNights), Number.NaN)).toEqual(threeNights);
  });

  it('loses no night of a list that becomes a pattern', () => {
    expect(kindsFor('pattern', given('list', ...threeNights), 2)).toEqual(threeNights);
  });
});

describe('nightsWithOutlets()', () => {
  const leg = (days: number, ...kinds: NightKind[]) => ({ days, nights: given('pattern', ...kinds) });

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

  it('counts what a list says of the nights of the leg, and no more', () => {
    expect(nightsWithOutlets({ days: 9, nights: given('list', 'none', 'wall', 'wall') })).toBe(2);
    expect(nightsWithOutlets({ days: 2, nights: given('list', 'none', 'wall', 'wall') })).toBe(1);
  });
});
