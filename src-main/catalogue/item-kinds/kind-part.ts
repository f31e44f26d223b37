import type { Item, ItemKind, ItemOf } from '../../../shared-types/item.ts';

/** What every item has, whatever its kind: the columns of the table `items`. */
export type CommonField =
  'id' | 'label' | 'state' | 'quantity' | 'massG' | 'price' | 'lifeYears' | 'resale' | 'mount' | 'notes';
export type CommonPart = Pick<Item, CommonField>;

/** What is left of an item of kind `K`: its kind, and the figures only that kind has. */
export type KindPart<K extends ItemKind = ItemKind> = K extends ItemKind
  ? Omit<ItemOf<K>, CommonField>
  : never;
