import { limits } from '../../../shared-types/limits.ts';
import { fieldsOf, type Field } from '../../parts/fields/shape.ts';

/** The fields of the limits; that on money names the rider's currency. */
export function limitFields(currency: string): readonly Field[] {
  return fieldsOf(limits).map((field) => (field.key === 'toBuy' ? inCurrency(field, currency) : field));
}

function inCurrency({ key, shape }: Field, currency: string): Field {
  if (shape.as !== 'number') return { key, shape };
  return { key, shape: { ...shape, meta: { ...shape.meta, unit: currency } } };
}
