import { describe, expect, it } from 'vitest';
import type { ItemFilter } from '../../../../src-renderer/state/inventory.svelte.ts';
import { filterItems } from '../../../../src-renderer/views/inventory/filter.ts';
import { demoItems } from '../../../../db/demo/demo.ts';

const retired = { ...demoItems[0]!, id: 'old-phone', label: 'Old phone', state: 'retired' as const };
const items = [...demoItems, retired];
const everything: ItemFilter = { kind: 'all', state: 'all', search: '' };

const labels = (change: Partial<ItemFilter>): string[] =>
  filterItems(items, { ...everything, ...change }).map(({ label }) => label);

describe('filterItems()', () => {
  it('finds nothing for words that stand nowhere', () => {
    expect(labels({ search: 'windmill' })).toEqual([]);
  });

  it('hides what is retired unless it is asked for', () => {
    expect(labels({ state: 'in-use' })).not.toContain('Old phone');
    expect(labels({ state: 'retired' })).toEqual(['Old phone']);
    expect(labels({})).toHaveLength(items.length);
  });

  it('takes every word of the search, in any order and case', () => {
    expect(labels({ search: '  BANK 18 ' })).toEqual(['20 Ah bank, 18 W in']);
  });

  it('joins kind, state and search', () => {
    expect(labels({ kind: 'panel', state: 'considering' })).toEqual(['20 W folding panel']);
    expect(labels({ kind: 'panel', search: 'phone' })).toEqual([]);
  });

  it('lists by label without changing what it was given', () => {
    const before = [...items];
    expect(labels({ kind: 'device' })[0]).toBe('Camera');
    expect(items).toEqual(before);
  });
});
