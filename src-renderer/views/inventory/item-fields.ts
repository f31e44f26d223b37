import { itemKinds, type ItemKind } from '../../../shared-types/item.ts';
import { fieldsOf, type Field } from '../../parts/fields/shape.ts';
import { lifeFields, lifeKeys } from './life-fields.ts';

/** The fields of an item form in four parts: what every item has, what its kind adds, how long it serves, and notes. */
export interface ItemFields {
  readonly common: readonly Field[];
  readonly own: readonly Field[];
  readonly life: readonly Field[];
  readonly notes: readonly Field[];
}

const commonKeys: readonly string[] = ['label', 'quantity', 'massG', 'price', 'mount'];
const stateKey = 'state';
const notesKey = 'notes';

/** The state of a stored item changes by its buttons, with undo; only a new item has a field for it. */
export function itemFields(kind: ItemKind, isNew: boolean): ItemFields {
  const all = fieldsOf(itemKinds[kind]);
  const isCommon = ({ key }: Field): boolean => commonKeys.includes(key) || (isNew && key === stateKey);
  const elsewhere = [...lifeKeys, notesKey, stateKey];
  return {
    common: all.filter(isCommon),
    own: all.filter((field) => !isCommon(field) && !elsewhere.includes(field.key)),
    life: lifeFields(kind),
    notes: all.filter(({ key }) => key === notesKey),
  };
}
