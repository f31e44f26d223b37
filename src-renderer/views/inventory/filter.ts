import { itemKinds, type Item, type ItemKind } from '../../../shared-types/item.ts';
import { itemState, type ItemState } from '../../../shared-types/item-common.ts';
import type { ItemFilter } from '../../state/inventory.svelte.ts';

/** The items a filter lets through, in their order; every word of the search must stand somewhere in label or notes. */
export function filterItems(items: readonly Item[], filter: ItemFilter): readonly Item[] {
  const words = wordsOf(filter.search);
  return items.filter(
    (item) => isOfKind(item, filter.kind) && isInState(item, filter.state) && holds(item, words),
  );
}

/** How many items each choice of a filter would show, the other choices and the search left as they are. */
export interface ItemCounts {
  readonly kind: Readonly<Record<ItemFilter['kind'], number>>;
  readonly state: Readonly<Record<ItemFilter['state'], number>>;
}

const kinds = Object.keys(itemKinds) as ItemKind[];
const kindChoices: readonly ItemFilter['kind'][] = ['all', ...kinds];
const stateChoices: readonly ItemFilter['state'][] = ['in-use', ...itemState.options, 'all'];

export function countItems(items: readonly Item[], filter: ItemFilter): ItemCounts {
  const words = wordsOf(filter.search);
  const found = items.filter((item) => holds(item, words));
  const ofKind = found.filter((item) => isOfKind(item, filter.kind));
  const inState = found.filter((item) => isInState(item, filter.state));
  return {
    kind: countEach(kindChoices, (kind) => inState.filter((item) => isOfKind(item, kind))),
    state: countEach(stateChoices, (state) => ofKind.filter((item) => isInState(item, state))),
  };
}

function countEach<Choice extends string>(
  choices: readonly Choice[],
  found: (choice: Choice) => readonly Item[],
): Readonly<Record<Choice, number>> {
  return Object.fromEntries(choices.map((choice) => [choice, found(choice).length])) as Record<
    Choice,
    number
  >;
}

function isOfKind(item: Item, kind: ItemFilter['kind']): boolean {
  return kind === 'all' || item.kind === kind;
}

function isInState(item: Item, state: ItemState | 'in-use' | 'all'): boolean {
  if (state === 'all') return true;
  return state === 'in-use' ? item.state !== 'retired' : item.state === state;
}

/** A changed item is another object, so that what is kept here is never out of date. */
const searched = new WeakMap<Item, string>();

function holds(item: Item, words: readonly string[]): boolean {
  if (words.length === 0) return true;
  const known = searched.get(item) ?? plain(`${item.label} ${item.notes}`);
  searched.set(item, known);
  return words.every((word) => known.includes(word));
}

function wordsOf(search: string): readonly string[] {
  return plain(search).split(/\s+/).filter(Boolean);
}

/** Without case and accents: whoever searches for a cafe means the café too. */
function plain(text: string): string {
  return text.normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase();
}
