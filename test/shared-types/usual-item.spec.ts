import { describe, expect, it } from 'vitest';
import { itemDraft, itemKinds, type ItemKind } from '../../shared-types/item.ts';
import { usualItem } from '../../shared-types/usual-item.ts';

const kinds = Object.keys(itemKinds) as ItemKind[];

describe('usualItem()', () => {
  it.each(kinds)('lacks nothing but the label of a %s', (kind) => {
    const start = usualItem(kind, 'EUR');
    const issues = itemDraft.safeParse(start).error?.issues.map(({ path }) => path.join('.'));
    expect(issues).toEqual(['label']);
    expect(itemDraft.safeParse({ ...start, label: 'Mine' }).success).toBe(true);
  });

  it.each(kinds)('prices a %s in the currency of the settings', (kind) => {
    expect(usualItem(kind, 'JPY').price.currency).toBe('JPY');
  });

  it('puts a generator hub into the front wheel', () => {
    expect(usualItem('generator-hub', 'EUR').mount).toBe('front-wheel');
  });
});
