import type { ItemDraft, ItemKind } from '../../../shared-types/item.ts';
import { usualItem } from '../../../shared-types/usual-item.ts';

/** The draft as another kind: what every item has stays as typed, what the kind adds starts anew. */
export function ofKind(draft: ItemDraft, kind: ItemKind): ItemDraft {
  const { label, state, quantity, price, notes } = draft;
  return { ...usualItem(kind, price.currency), label, state, quantity, price, notes };
}
