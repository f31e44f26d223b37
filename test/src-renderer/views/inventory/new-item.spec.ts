import { describe, expect, it } from 'vitest';
import { itemDraft, itemKinds, type ItemKind } from '../../../../shared-types/item.ts';
import { usualItem } from '../../../../shared-types/usual-item.ts';
import { ofKind } from '../../../../src-renderer/views/inventory/new-item.ts';

const kinds = Object.keys(itemKinds) as ItemKind[];

describe('ofKind()', () => {
  it('keeps what was typed when the kind was chosen late', () => {
    const typed = {
      ...usualItem('device', 'JPY'),
      label: 'Small panel',
      price: { minor: 4000, currency: 'JPY' },
      lifeYears: 3,
      resale: { minor: 1500, currency: 'JPY' },
      notes: 'second hand',
    };
    expect(ofKind(typed, 'panel')).toMatchObject({
      kind: 'panel',
      label: 'Small panel',
      price: { minor: 4000, currency: 'JPY' },
      lifeYears: 3,
      resale: { minor: 1500, currency: 'JPY' },
      notes: 'second hand',
      ratedW: 15,
    });
  });

  it.each(kinds)('leaves nothing of another kind in a %s', (kind) => {
    const turned = { ...ofKind(usualItem('bank', 'EUR'), kind), label: 'Mine' };
    expect(itemDraft.safeParse(turned).success).toBe(true);
  });
});
