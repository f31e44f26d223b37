import { sky as schema, type SkySettings } from '../../../shared-types/settings.ts';
import { fieldsOf, type Field } from '../../parts/fields/shape.ts';

const all = fieldsOf(schema);

/** The settings of the sky; the table of day-to-day changes has its persistence built in. */
export function skyFields({ method }: SkySettings): readonly Field[] {
  return method === 'distribution' ? all : all.filter(({ key }) => key !== 'persistence');
}
