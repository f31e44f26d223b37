import type { ItemDraft, ItemKind } from '../../../shared-types/item.ts';
import { usualItem } from '../../../shared-types/usual-item.ts';

/** The draft as another kind: what every item has stays as typed, what the kind adds starts anew. */
export function ofKind(draft: ItemDraft, kind: ItemKind): ItemDraft {
  const { label, state, quantity, price, lifeYears, resale, notes } = draft;
  const typed = { label, state, quantity, price, lifeYears, resale, notes };
  return { ...usualItem(kind, price.currency), ...typed };
}
