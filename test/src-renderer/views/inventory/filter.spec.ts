import { describe, expect, it } from 'vitest';
import type { ItemFilter } from '../../../../src-renderer/state/inventory.svelte.ts';
import { countItems, filterItems } from '../../../../src-renderer/views/inventory/filter.ts';
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

  it('finds words in the notes, whatever their case and accents', () => {
    const noted = { ...demoItems[0]!, notes: 'Bought in the Café at Łódź' };
    const found = (search: string) => filterItems([noted], { ...everything, search }).length;
    expect([found('cafe'), found('CAFÉ bought'), found('cafe sold')]).toEqual([1, 1, 0]);
  });

  it('searches a changed item anew', () => {
    expect(filterItems([retired], { ...everything, search: 'torch' })).toEqual([]);
    const renamed = { ...retired, label: 'Torch' };
    expect(filterItems([renamed], { ...everything, search: 'torch' })).toEqual([renamed]);
  });

  it('keeps the order it is given', () => {
    expect(filterItems(items, everything)).toEqual(items);
  });
});

describe('countItems()', () => {
  it('counts for each choice what it would show beside the others', () => {
    const counts = countItems(items, { kind: 'panel', state: 'in-use', search: '' });
    const shown = (change: Partial<ItemFilter>) =>
      filterItems(items, { kind: 'panel', state: 'in-use', search: '', ...change }).length;
    expect(counts.kind.all).toBe(shown({ kind: 'all' }));
    expect(counts.kind.device).toBe(shown({ kind: 'device' }));
    expect(counts.state.retired).toBe(0);
    expect(counts.state.all).toBe(shown({ state: 'all' }));
  });

  it('counts only what is found', () => {
    const counts = countItems(items, { ...everything, search: 'windmill' });
    expect(new Set([...Object.values(counts.kind), ...Object.values(counts.state)])).toEqual(new Set([0]));
  });
});
