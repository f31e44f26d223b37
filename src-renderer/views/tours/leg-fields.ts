import { tourDraft } from '../../../shared-types/tour.ts';
import { fieldsOf, type Field } from '../../parts/fields/shape.ts';

const tour = fieldsOf(tourDraft);
const leg = fieldsOf(tourDraft.shape.legs.element);

/** The fields of these keys, in the order asked for. */
function pick(fields: readonly Field[], keys: readonly string[]): readonly Field[] {
  return keys.flatMap((key) => fields.filter((field) => field.key === key));
}

/** Parts of a place, of a leg's nights, as their groups hold them. */
function within(fields: readonly Field[], key: string, option?: string): readonly Field[] {
  const shape = fields.find((field) => field.key === key)?.shape;
  if (shape === undefined || !('fields' in shape || 'options' in shape)) return [];
  if ('fields' in shape) return shape.fields;
  return shape.options.find(({ value }) => value === option)?.fields ?? [];
}

export const tourFields = pick(tour, ['label', 'startDate', 'riderMassKg', 'bicycleMassKg', 'riderW']);
export const bicycleFields = pick(tour, ['bicycle']);
export const tourNotes = pick(tour, ['notes']);
export const legFields = pick(leg, ['label', 'days', 'ridingHours']);
export const windFields = pick(leg, ['wind']);
export const legStops = pick(leg, ['dayStops']);
export const coordinateFields = within(leg, 'place', 'coordinates');
export const terrainClassFields = within(leg, 'terrain', 'class');
export const outletFields = pick(within(leg, 'nights'), ['wallOutlets', 'postOutlets']);
