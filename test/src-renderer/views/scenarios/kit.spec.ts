import { describe, expect, it } from 'vitest';
import { itemKinds } from '../../../../shared-types/item.ts';
import { kitGroups, missingFrom, withItem } from '../../../../src-renderer/views/scenarios/kit.ts';
import { demoItems } from '../../../../db/demo/demo.ts';

const carried = [{ itemId: 'demo-bank-20', quantity: 2 }];
const idsOf = (groups: ReturnType<typeof kitGroups>): string[] =>
  groups.flatMap(({ items }) => items.map(({ id }) => id));

describe('kitGroups()', () => {
  it('offers nothing from an empty inventory', () => {
    expect(kitGroups([], carried)).toEqual([]);
  });

  it('offers no owned device, which the tour brings along', () => {
    expect(idsOf(kitGroups(demoItems, []))).not.toContain('demo-phone');
  });

  it('offers a device that is only considered', () => {
    const items = demoItems.map((item) => ({ ...item, state: 'considering' as const }));
    expect(idsOf(kitGroups(items, []))).toContain('demo-phone');
  });

  it('offers a retired item only while it is carried', () => {
    const items = demoItems.map((item) => ({ ...item, state: 'retired' as const }));
    expect(idsOf(kitGroups(items, []))).toEqual([]);
    expect(idsOf(kitGroups(items, carried))).toEqual(['demo-bank-20']);
  });

  it('groups by kind in the order of the contract', () => {
    const kinds = kitGroups(demoItems, []).map(({ kind }) => kind);
    expect(kinds).toEqual(Object.keys(itemKinds).filter((kind) => kind !== 'device'));
  });
});

describe('withItem()', () => {
  it('carries an item once, however often it is ticked', () => {
    const once = withItem(carried, 'demo-bank-20', true);
    expect(once).toEqual([{ itemId: 'demo-bank-20', quantity: 1 }]);
  });

  it('takes out the item and nothing else', () => {
    const two = withItem(carried, 'demo-bank-10', true);
    expect(withItem(two, 'demo-bank-10', false)).toEqual(carried);
    expect(withItem(two, 'nothing', false)).toEqual(two);
  });
});

describe('missingFrom()', () => {
  it('finds lines whose item is gone from the catalogue', () => {
    const kit = [...carried, { itemId: 'gone', quantity: 1 }];
    expect(missingFrom(demoItems, kit)).toEqual([{ itemId: 'gone', quantity: 1 }]);
    expect(missingFrom(demoItems, carried)).toEqual([]);
  });
});
