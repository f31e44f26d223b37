import { describe, expect, it } from 'vitest';
import { demoItems } from '../../../../db/demo/demo.ts';
import type { Item } from '../../../../shared-types/item.ts';
import { usualItem } from '../../../../shared-types/usual-item.ts';
import type { ItemColumn, ItemSort } from '../../../../src-renderer/state/inventory.svelte.ts';
import { sortItems } from '../../../../src-renderer/views/inventory/item-order.ts';

const cable = (label: string, change: Partial<Item> = {}): Item =>
  ({ ...usualItem('accessory', 'EUR'), id: label, label, ...change }) as Item;

const labels = (items: readonly Item[], by: ItemColumn, direction: ItemSort['direction'] = 'ascending') =>
  sortItems(items, { by, direction }).map(({ label }) => label);

describe('sortItems()', () => {
  it('reads numbers in labels as numbers, and leaves what it was given as it is', () => {
    const items = [cable('10 Ah'), cable('2 Ah'), cable('Émile'), cable('Zelt'), cable('eben')];
    const before = [...items];
    expect(labels(items, 'label')).toEqual(['2 Ah', '10 Ah', 'eben', 'Émile', 'Zelt']);
    expect(labels(items, 'label', 'descending')[0]).toBe('Zelt');
    expect(items).toEqual(before);
  });

  it('settles ties by label, whichever way the column goes', () => {
    const items = [cable('c', { massG: 5 }), cable('a', { massG: 5 }), cable('b', { massG: 9 })];
    expect(labels(items, 'massG')).toEqual(['a', 'c', 'b']);
    expect(labels(items, 'massG', 'descending')).toEqual(['b', 'a', 'c']);
  });

  it('puts kinds, states and mounts in the order of their choices', () => {
    const items = [cable('r', { state: 'retired' }), cable('o'), cable('c', { state: 'considering' })];
    expect(labels(items, 'state')).toEqual(['o', 'c', 'r']);
    const kinds = sortItems(demoItems, { by: 'kind', direction: 'ascending' }).map(({ kind }) => kind);
    expect([kinds[0], kinds.at(-1)]).toEqual(['device', 'accessory']);
    const mounts = [cable('body', { mount: 'body' }), cable('fork', { mount: 'fork' })];
    expect(labels(mounts, 'mount')).toEqual(['fork', 'body']);
  });

  it('sorts amounts of money by what they say, not by their minor units', () => {
    const yen = cable('yen', { price: { minor: 900, currency: 'JPY' } });
    const euro = cable('euro', { price: { minor: 1000, currency: 'EUR' } });
    expect(labels([yen, euro], 'price')).toEqual(['euro', 'yen']);
  });

  it('sorts key figures within each kind, by the measured one where there is one', () => {
    const bank = (label: string, wh: number, measuredWh: number | null): Item => ({
      ...usualItem('bank', 'EUR'),
      id: label,
      label,
      capacity: { as: 'wh', wh },
      measuredDeliverableWh: measuredWh === null ? null : { value: measuredWh, on: '2026-03-14' },
    });
    const panel: Item = { ...usualItem('panel', 'EUR'), id: 'p', label: 'panel', ratedW: 1 };
    expect(labels([panel, bank('fresh', 60, null), bank('worn', 90, 50)], 'keyFigure')).toEqual([
      'worn',
      'fresh',
      'panel',
    ]);
  });
});
