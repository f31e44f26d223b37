import { describe, expect, it } from 'vitest';
import { itemDraft, itemKinds, type ItemKind } from '../../../../shared-types/item.ts';
import { ofKind, startingItem } from '../../../../src-renderer/views/inventory/new-item.ts';

const kinds = Object.keys(itemKinds) as ItemKind[];

describe('startingItem()', () => {
  it.each(kinds)('lacks nothing but the label of a %s', (kind) => {
    const start = startingItem(kind, 'EUR');
    const issues = itemDraft.safeParse(start).error?.issues.map(({ path }) => path.join('.'));
    expect(issues).toEqual(['label']);
    expect(itemDraft.safeParse({ ...start, label: 'Mine' }).success).toBe(true);
  });

  it.each(kinds)('prices a %s in the currency of the settings', (kind) => {
    expect(startingItem(kind, 'JPY').price.currency).toBe('JPY');
  });

  it('puts a generator hub into the front wheel', () => {
    expect(startingItem('generator-hub', 'EUR').mount).toBe('front-wheel');
  });
});

describe('ofKind()', () => {
  it('keeps what was typed when the kind was chosen late', () => {
    const typed = {
      ...startingItem('device', 'JPY'),
      label: 'Small panel',
      price: { minor: 4000, currency: 'JPY' },
      notes: 'second hand',
    };
    expect(ofKind(typed, 'panel')).toMatchObject({
      kind: 'panel',
      label: 'Small panel',
      price: { minor: 4000, currency: 'JPY' },
      notes: 'second hand',
      ratedW: 15,
    });
  });

  it.each(kinds)('leaves nothing of another kind in a %s', (kind) => {
    const turned = { ...ofKind(startingItem('bank', 'EUR'), kind), label: 'Mine' };
    expect(itemDraft.safeParse(turned).success).toBe(true);
  });
});
