import type { FieldChange } from '../../../shared-types/exchange.ts';

/** What differs between two values of plain data, field by field; lists of other length are one difference. */
export function fieldChanges(before: unknown, after: unknown): readonly FieldChange[] {
  return changesAt('', before, after);
}

function changesAt(path: string, before: unknown, after: unknown): readonly FieldChange[] {
  if (before === after) return [];
  const isWhole = !isPart(before) && !isPart(after);
  if (isWhole || lengthOf(before) !== lengthOf(after))
    return [{ path, before: shown(before), after: shown(after) }];
  const [one, other] = [partsOf(before), partsOf(after)];
  const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...keys].flatMap((key) => changesAt(path === '' ? key : `${path}.${key}`, one[key], other[key]));
}

type Parts = Readonly<Record<string, unknown>>;

function isPart(value: unknown): value is Parts {
  return typeof value === 'object' && value !== null;
}

/** A group that is not there is one without fields. */
function partsOf(value: unknown): Parts {
  return isPart(value) ? value : {};
}

/** null for what is no list. */
function lengthOf(value: unknown): number | null {
  return Array.isArray(value) ? value.length : null;
}

function shown(value: unknown): FieldChange['before'] {
  if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean') return value;
  const length = lengthOf(value);
  if (length !== null) return length === 1 ? '1 entry' : `${length} entries`;
  return null;
}
