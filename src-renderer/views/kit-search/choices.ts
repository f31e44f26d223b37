import { itemKinds, type Item } from '../../../shared-types/item.ts';
import type { KitChoice, KitSearchRequest } from '../../../shared-types/kit-search.ts';

/** The items that a search may take: owned and considered, devices apart; by kind, then by label. */
export function searchedItems(items: readonly Item[]): readonly Item[] {
  const kinds = Object.keys(itemKinds);
  return items
    .filter(({ kind, state }) => kind !== 'device' && state !== 'retired')
    .toSorted((a, b) => kinds.indexOf(a.kind) - kinds.indexOf(b.kind) || a.label.localeCompare(b.label));
}

/** What holds of an item until the rider chooses: no search knows that a cable is needed, so what is owned comes along. */
export function usualChoice(item: Item): KitChoice {
  return item.kind === 'accessory' && !item.forHub && item.state === 'owned' ? 'must' : 'may';
}

export type Choices = Readonly<Record<string, KitChoice>>;

export function choiceOf(item: Item, choices: Choices): KitChoice {
  return choices[item.id] ?? usualChoice(item);
}

/** All choices that differ from "may", as the call takes them. */
export function requestedChoices(items: readonly Item[], choices: Choices): KitSearchRequest['choices'] {
  return searchedItems(items)
    .map((item) => ({ itemId: item.id, choice: choiceOf(item, choices) }))
    .filter(({ choice }) => choice !== 'may');
}

/** Considered, and priced in another currency than the rider's: never converted, so never compared. */
function isOtherMoney(item: Item, currency: string): boolean {
  if (item.state === 'owned') return false;
  const building = item.kind === 'generator-hub' ? [item.rim.cost, item.spokes.cost, item.labour] : [];
  return [item.price, ...building].some((price) => price.minor > 0 && price.currency !== currency);
}

/** How many kits the choices make before limits: of each item none to all where it may come, one to all where it must. */
export function kitsToTry(items: readonly Item[], choices: Choices, currency: string): number {
  const open = searchedItems(items).filter(
    (item) => choiceOf(item, choices) !== 'not' && !isOtherMoney(item, currency),
  );
  const hasHub = open.some(({ kind }) => kind === 'generator-hub');
  return open.reduce((kits, item) => {
    if (choiceOf(item, choices) === 'must') return kits * mostOf(item);
    return kits * (comesByItself(item, hasHub) ? mostOf(item) + 1 : 1);
  }, 1);
}

/** A bicycle has one front wheel. */
function mostOf({ kind, quantity }: Item): number {
  return kind === 'generator-hub' || kind === 'converter' ? 1 : quantity;
}

/** Where there is no hub no converter is tried, and a hub brings its own cables. */
function comesByItself(item: Item, hasHub: boolean): boolean {
  return item.kind === 'converter' ? hasHub : item.kind !== 'accessory' || !item.forHub;
}
