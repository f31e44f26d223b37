import { itemDraft } from '../../shared-types/item.ts';
import { money } from '../../shared-types/money.ts';
import { scenarioDraft } from '../../shared-types/scenario.ts';
import { criteria, settings, type Criterion, type Settings } from '../../shared-types/settings.ts';
import { tourDraft } from '../../shared-types/tour.ts';
import { fieldNameAt } from '../parts/fields/field-name.ts';
import { changedPath, valueAt } from './carry-over.ts';

/** A change in words, and the field it was made in: null where it is not one field's value. */
export interface EditWords {
  readonly words: string;
  readonly field: string | null;
}

interface Labelled {
  readonly label: string;
}

const schemas = { items: itemDraft, tours: tourDraft, scenarios: scenarioDraft };

/** `Changed ‘Mass of one’ of 20 Ah bank`; null when the two say the same. */
export function editWords<Row extends Labelled>(
  list: keyof typeof schemas,
  before: Row,
  after: Row,
): EditWords | null {
  const path = changedPath(before, after);
  if (path === null) return null;
  const name = nameAt(schemas[list], path);
  const whole = [entryLabel(before, path), before.label].filter((label) => label !== null).join(', ');
  const words = name === null ? `Changed ${whole}` : `${verb(before, after, path)} ‘${name}’ of ${whole}`;
  return { words, field: fieldOf(before, after, path) };
}

/** What changed in the settings, in words; null when the two say the same. */
export function settingsWords(before: Settings, after: Settings): EditWords | null {
  const path = changedPath(before, after);
  if (path === null) return null;
  return { words: settingsText(path), field: fieldOf(before, after, path) };
}

function settingsText(path: readonly string[]): string {
  const [part, group, key] = path;
  if (part === 'tourId') return 'Chose the tour to compare on';
  if (part === 'preferences') return preferenceText(group, key);
  const name = nameAt(settings, path);
  return name === null ? 'Changed settings' : `Changed ‘${name}’ in the settings`;
}

function preferenceText(group: string | undefined, key: string | undefined): string {
  if (group === undefined) return 'Changed what counts for you';
  if (!Object.hasOwn(criteria, group)) return 'Changed what no scenario may pass';
  const { label } = criteria[group as Criterion];
  return key === 'weight' ? `Changed the weight of ‘${label}’` : `Changed the scale of ‘${label}’`;
}

/** The nearest name on the way up from what changed: not every part has one of its own. */
export function nameAt(schema: Parameters<typeof fieldNameAt>[0], path: readonly string[]): string | null {
  const last = path.at(-1);
  if (last === undefined) return null;
  const named = Object.hasOwn(money.shape, last) ? null : fieldNameAt(schema, path);
  return named ?? nameAt(schema, path.slice(0, -1));
}

/** The label of the entry of a list that the path goes through, such as a leg's. */
function entryLabel(row: unknown, path: readonly string[]): string | null {
  const entry = path.length < 3 ? null : valueAt(row, path.slice(0, 2));
  const label = valueAt(entry, ['label']);
  return typeof label === 'string' && label.trim() !== '' ? label : null;
}

function verb(before: unknown, after: unknown, path: readonly string[]): string {
  const more = lengthAt(after, path) - lengthAt(before, path);
  if (more === 0) return 'Changed';
  return more > 0 ? 'Added to' : 'Removed from';
}

function lengthAt(root: unknown, path: readonly string[]): number {
  const value = valueAt(root, path);
  return Array.isArray(value) ? value.length : 0;
}

function fieldOf(before: unknown, after: unknown, path: readonly string[]): string | null {
  const isField = path.length > 0 && lengthAt(before, path) === lengthAt(after, path);
  return isField ? path.join('.') : null;
}
