import { itemKindNames, itemKinds, type ItemKind } from '../../../shared-types/item.ts';
import { formatNumber } from '../../../shared-types/figures.ts';
import { usualLifeYears } from '../../../shared-types/usual-life.ts';
import { fieldsOf, type Field } from '../../parts/fields/shape.ts';

/** What is seldom filled in: how long it serves and what it fetches then. */
export const lifeKeys: readonly string[] = ['lifeYears', 'resale'];

/** The fields of the life of an item; the years say what is usual for its kind. */
export function lifeFields(kind: ItemKind): readonly Field[] {
  return fieldsOf(itemKinds[kind])
    .filter(({ key }) => lifeKeys.includes(key))
    .map((field) => withUsualYears(field, kind));
}

function withUsualYears({ key, shape }: Field, kind: ItemKind): Field {
  if (shape.as !== 'number') return { key, shape };
  const usual = formatNumber(usualLifeYears[kind]);
  const hint = `From new to done with. Left empty: ${usual}, usual for the kind "${itemKindNames[kind].one}".`;
  return { key, shape: { ...shape, meta: { ...shape.meta, hint } } };
}
