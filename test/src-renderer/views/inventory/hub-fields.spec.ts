import { describe, expect, it } from 'vitest';
import { hubGroups } from '../../../../src-renderer/views/inventory/hub-fields.ts';
import { itemFields } from '../../../../src-renderer/views/inventory/item-fields.ts';

const keysOf = (fields: readonly { readonly key: string }[]): string[] => fields.map(({ key }) => key);

describe('hubGroups()', () => {
  // A field that is new in the schema must not miss its place in the form.
  it('has every field of a hub in one group', () => {
    const grouped = hubGroups().flatMap(({ rows }) => rows.flatMap(keysOf));
    expect(grouped.toSorted()).toEqual(keysOf(itemFields('generator-hub', false).own).toSorted());
  });

  it('puts the two drags side by side, among the electrics', () => {
    const electrics = hubGroups().find(({ title }) => title === 'Electrics');
    expect(electrics?.rows.map(keysOf)).toContainEqual(['idleDragW10', 'idleDragW30']);
  });
});
