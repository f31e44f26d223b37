import { scenarioDraft } from '../../../shared-types/scenario.ts';
import { fieldsOf, type Field } from '../../parts/fields/shape.ts';

const all = fieldsOf(scenarioDraft);

function named(...keys: readonly string[]): readonly Field[] {
  return all.filter(({ key }) => keys.includes(key));
}

export const headFields = named('label', 'method');
export const ruleFields = named('rules');
export const noteFields = named('notes');

const kit = all.find(({ key }) => key === 'kit')?.shape;

/** How many of an item are carried. */
export const quantityMeta =
  kit?.as === 'list'
    ? kit.fields.flatMap(({ key, shape }) => (key === 'quantity' && 'meta' in shape ? [shape.meta] : []))[0]
    : undefined;
