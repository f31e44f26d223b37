import type { Item } from '../../../shared-types/item.ts';
import { readingKinds, type ReadingKind } from '../../../shared-types/reading.ts';
import { fieldsOf, type Field, type Option, type Shape } from '../../parts/fields/shape.ts';
import { countedLights } from './new-reading.ts';

const stateKeys: readonly string[] = ['state', 'before', 'after'];

const stateHeads: Readonly<Record<string, string>> = { state: 'In it now' };

/** The fields of a reading of an item, in the order they are typed; lights only where the item has some to count. */
export function readingFields(as: ReadingKind, item: Item): readonly Field[] {
  const fields = fieldsOf(readingKinds[as]).map(({ key, shape }) => ({
    key,
    shape: stateKeys.includes(key) ? stateShape(key, shape, countedLights(item)) : shape,
  }));
  const isLast = ({ key }: Field): boolean => key === 'on' || key === 'note';
  return [...fields.filter((field) => !isLast(field)), ...fields.filter(isLast)];
}

/** The lights of an option with as many as the item has. */
function counting(option: Option, lights: number): Option {
  const fields = option.fields.map((field) =>
    field.key === 'lit' && field.shape.as === 'number'
      ? {
          ...field,
          shape: { ...field.shape, meta: { ...field.shape.meta, max: lights, hint: `Of ${lights}.` } },
        }
      : field,
  );
  return { ...option, fields };
}

function stateShape(key: string, shape: Shape, lights: number): Shape {
  if (shape.as !== 'either') return shape;
  const label = stateHeads[key] ?? shape.label;
  if (lights > 0)
    return { ...shape, label, options: shape.options.map((option) => counting(option, lights)) };
  const share = shape.options.find(({ value }) => value === 'share');
  return { as: 'group', label, fields: share?.fields ?? [] };
}
