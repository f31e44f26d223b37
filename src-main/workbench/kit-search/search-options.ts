import { itemKinds, type Item } from '../../../shared-types/item.ts';
import type { KitChoice, KitSearchRequest } from '../../../shared-types/kit-search.ts';
import type { Settings } from '../../../shared-types/settings.ts';
import { costOf } from '../../model/judge/cost.ts';
import { frontShares } from '../../model/judge/front-load.ts';
import type { KitOption, PlainFigures } from '../../model/judge/kit-search/kit-space.ts';
import { massOf } from '../../model/judge/mass.ts';
import type { CarriedItem } from '../assemble/kit.ts';
import { pricedLines, weighedLines } from '../assemble/money-and-mass.ts';

/** An item of the search, with what comes along with it. */
export interface SearchOption extends KitOption {
  readonly item: Item;
  /** Cables that only a generator hub needs. */
  readonly along: readonly Item[];
}

export interface SearchOptions {
  readonly options: readonly SearchOption[];
  /** Considered, and priced in another currency than the rider's: never converted, so never compared. */
  readonly otherMoney: readonly Item[];
}

/** The items that a search may put into a kit: owned and considered, devices apart, as the rider chose. */
export function searchOptions(
  items: readonly Item[],
  choices: KitSearchRequest['choices'],
  settings: Settings,
): SearchOptions {
  const chosen = new Map(choices.map(({ itemId, choice }) => [itemId, choice]));
  const choiceOf = ({ id }: Item): KitChoice => chosen.get(id) ?? 'may';
  const open = inKindOrder(items).filter(
    (item) => item.kind !== 'device' && item.state !== 'retired' && choiceOf(item) !== 'not',
  );
  const otherMoney = open.filter((item) => isOtherMoney(item, settings.currency));
  const left = open.filter((item) => !otherMoney.includes(item));
  const along = left.filter((item) => isForHub(item) && choiceOf(item) === 'may');
  const hasHub = left.some(({ kind }) => kind === 'generator-hub');
  const options = left
    .filter((item) => !along.includes(item))
    .map((item) => optionOf(item, item.kind === 'generator-hub' ? along : [], choiceOf(item), settings));
  return {
    options: hasHub
      ? options
      : options.filter(({ item }) => item.kind !== 'converter' || choiceOf(item) === 'must'),
    otherMoney,
  };
}

/** Banks first, cables last: the order in which a kit is told. */
function inKindOrder(items: readonly Item[]): readonly Item[] {
  const kinds = Object.keys(itemKinds);
  return items.toSorted((a, b) => kinds.indexOf(a.kind) - kinds.indexOf(b.kind));
}

function isForHub(item: Item): boolean {
  return item.kind === 'accessory' && item.forHub;
}

function isOtherMoney(item: Item, currency: string): boolean {
  const [line] = pricedLines([{ item, carried: 1 }]);
  if (line === undefined || item.state === 'owned') return false;
  return [line.price, ...line.building].some((price) => price.minor > 0 && price.currency !== currency);
}

function optionOf(item: Item, along: readonly Item[], choice: KitChoice, settings: Settings): SearchOption {
  return {
    item,
    along,
    least: choice === 'must' ? 1 : 0,
    // A bicycle has one front wheel.
    most: item.kind === 'generator-hub' || item.kind === 'converter' ? 1 : item.quantity,
    each: figuresOf([item, ...along], settings),
  };
}

function figuresOf(items: readonly Item[], settings: Settings): PlainFigures {
  const lines = items.map((item): CarriedItem => ({ item, carried: 1 }));
  const mass = massOf(weighedLines(lines), frontShares(settings.frontLoad));
  return {
    toBuyMinor: costOf(pricedLines(lines), settings).toBuy.minor,
    grams: mass.carriedG,
    frontWheelGrams: mass.frontWheelG,
  };
}
