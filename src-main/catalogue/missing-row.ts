import { failure, type Outcome } from '../../shared-types/outcome.ts';
import type { ReadDb } from './connection.ts';
import { hasItem } from './items.ts';

/** The answer to a draft that names an item which is not there, or null when all are. `pathOf` names the field. */
export function missingItem(
  read: ReadDb,
  itemIds: readonly string[],
  pathOf: (index: number) => string,
): Outcome<never> | null {
  const fields = itemIds.flatMap((id, index) =>
    hasItem(read, id)
      ? []
      : [{ path: pathOf(index), allowed: 'an item in the catalogue', got: JSON.stringify(id) }],
  );
  const [first] = fields;
  if (first === undefined) return null;
  return failure('not-found', `The item ${first.got} is not in the catalogue (any more).`, fields);
}
