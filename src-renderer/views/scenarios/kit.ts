import { itemKinds, type Item, type ItemKind } from '../../../shared-types/item.ts';
import type { ScenarioDraft } from '../../../shared-types/scenario.ts';

type Kit = ScenarioDraft['kit'];

/** What a scenario can carry, kind by kind. */
export interface KitGroup {
  readonly kind: ItemKind;
  readonly items: readonly Item[];
}

/**
 * Items that may be carried: all in use, and those carried already even if retired since. Owned devices are left out,
 * because the tour decides which of them come along.
 */
export function kitGroups(items: readonly Item[], kit: Kit): readonly KitGroup[] {
  const carried = new Set(kit.map(({ itemId }) => itemId));
  const offered = items.filter((item) => carried.has(item.id) || isOffered(item));
  const kinds = Object.keys(itemKinds) as ItemKind[];
  return kinds
    .map((kind) => ({ kind, items: offered.filter((item) => item.kind === kind) }))
    .filter((group) => group.items.length > 0);
}

function isOffered({ kind, state }: Item): boolean {
  return kind === 'device' ? state === 'considering' : state !== 'retired';
}

export function withItem(kit: Kit, itemId: string, carried: boolean): Kit {
  const others = kit.filter((line) => line.itemId !== itemId);
  return carried ? [...others, { itemId, quantity: 1 }] : others;
}

/** Lines whose item is no longer in the catalogue. */
export function missingFrom(items: readonly Item[], kit: Kit): Kit {
  const known = new Set(items.map(({ id }) => id));
  return kit.filter(({ itemId }) => !known.has(itemId));
}
