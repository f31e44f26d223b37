import type { FieldError } from '../../../shared-types/outcome.ts';
import { tourDraft, type Leg } from '../../../shared-types/tour.ts';
import { quotedName, refusedWords } from '../../parts/fields/refused-words.ts';
import { legName } from './leg-name.ts';

/** What keeps a tour from being stored: `‘Days’ of Steppe is refused`. */
export function refusedText(errors: readonly FieldError[], legs: readonly Pick<Leg, 'label'>[]): string {
  return refusedWords(errors, (path) => nameAt(path, legs));
}

function nameAt(path: readonly string[], legs: readonly Pick<Leg, 'label'>[]): string {
  const field = quotedName(tourDraft, path);
  const place = path[0] === 'legs' ? Number(path[1]) : Number.NaN;
  const leg = legs[place];
  return leg === undefined ? field : `${field} of ${legName(leg, place)}`;
}
