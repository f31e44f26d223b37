import type { FieldError } from '../../../shared-types/outcome.ts';
import { tourDraft, type Leg } from '../../../shared-types/tour.ts';
import { fieldNameAt } from '../../parts/fields/field-name.ts';
import { legName } from './leg-name.ts';

/** What keeps a tour from being stored: `‘Days’ of Steppe is refused`. */
export function refusedText(errors: readonly FieldError[], legs: readonly Pick<Leg, 'label'>[]): string {
  const [first, ...more] = errors;
  if (first === undefined) return 'the catalogue did not take it';
  const [, ...path] = first.path.split('.');
  const name = nameAt(path, legs);
  return more.length === 0 ? `${name} is refused` : `${name} and ${more.length} more are refused`;
}

function nameAt(path: readonly string[], legs: readonly Pick<Leg, 'label'>[]): string {
  const field = `‘${fieldNameAt(tourDraft, path) ?? path.join(' ')}’`;
  const place = path[0] === 'legs' ? Number(path[1]) : Number.NaN;
  const leg = legs[place];
  return leg === undefined ? field : `${field} of ${legName(leg, place)}`;
}
