import { describe, expect, it } from 'vitest';
import { itemKinds, type ItemKind } from '../../../../shared-types/item.ts';
import { itemFields } from '../../../../src-renderer/views/inventory/item-fields.ts';

const kinds = Object.keys(itemKinds) as ItemKind[];
const keysOf = (kind: ItemKind, isNew: boolean): string[] => {
  const { common, own, life, notes } = itemFields(kind, isNew);
  return [...common, ...own, ...life, ...notes].map(({ key }) => key);
};

describe('itemFields()', () => {
  it.each(kinds)('loses no field of a new %s', (kind) => {
    const declared = Object.keys(itemKinds[kind].shape).filter((key) => key !== 'kind');
    expect(keysOf(kind, true).toSorted()).toEqual(declared.toSorted());
  });

  it.each(kinds)('leaves the state of a stored %s to its buttons', (kind) => {
    expect(keysOf(kind, false)).not.toContain('state');
    expect(keysOf(kind, false)).toHaveLength(keysOf(kind, true).length - 1);
  });

  it('asks of a cable only whether the hub needs it', () => {
    expect(itemFields('accessory', false).own.map(({ key }) => key)).toEqual(['forHub']);
  });
});
