import type { FieldMeta } from '../../../shared-types/field.ts';
import { limits } from '../../../shared-types/limits.ts';
import { fieldsOf, type Field } from '../../parts/fields/shape.ts';
import { criterionLabel } from '../../parts/text/criterion-label.ts';

/** The fields of the limits; that on money names the rider's currency, that on grams what they are shown in. */
export function limitFields(currency: string): readonly Field[] {
  const changes: Readonly<Record<string, Partial<FieldMeta>>> = {
    toBuy: { unit: currency },
    grams: { label: `${criterionLabel('grams')}, at most` },
  };
  return fieldsOf(limits).map(({ key, shape }) =>
    shape.as === 'number'
      ? { key, shape: { ...shape, meta: { ...shape.meta, ...changes[key] } } }
      : { key, shape },
  );
}
