import type { Item } from '../../../shared-types/item.ts';
import type { ItemFilter } from '../../state/inventory.svelte.ts';

/** The items a filter lets through, by label; every word of the search must stand somewhere in label or notes. */
export function filterItems(items: readonly Item[], filter: ItemFilter): readonly Item[] {
  const words = filter.search.toLowerCase().split(/\s+/).filter(Boolean);
  const shown = items.filter(
    (item) =>
      (filter.kind === 'all' || item.kind === filter.kind) &&
      passesState(item, filter.state) &&
      words.every((word) => `${item.label} ${item.notes}`.toLowerCase().includes(word)),
  );
  return shown.toSorted((one, other) => one.label.localeCompare(other.label, undefined, { numeric: true }));
}

function passesState(item: Item, state: ItemFilter['state']): boolean {
  if (state === 'all') return true;
  return state === 'in-use' ? item.state !== 'retired' : item.state === state;
}
