import { itemKinds, labelWh, type Item, type ItemKind } from '../../../shared-types/item.ts';
import { itemState, mount } from '../../../shared-types/item-common.ts';
import { toMajor } from '../../../shared-types/money.ts';
import type { ItemColumn, ItemSort } from '../../state/inventory.svelte.ts';

const words = new Intl.Collator(undefined, { numeric: true });

/** Lists sorted by label before: it takes the words of the language, which is dear, and every other order begins with it. */
const byLabel = new WeakMap<readonly Item[], readonly Item[]>();

function labelOrder(items: readonly Item[]): readonly Item[] {
  const known = byLabel.get(items) ?? items.toSorted((one, other) => words.compare(one.label, other.label));
  byLabel.set(items, known);
  return known;
}

/** Kinds, states and mounts go in the order of their choices; amounts of money by their figure, whatever the currency. */
export function sortItems(items: readonly Item[], { by, direction }: ItemSort): readonly Item[] {
  const ordered = labelOrder(items);
  if (by === 'label') return direction === 'ascending' ? ordered : ordered.toReversed();
  const figure = figures[by];
  const sign = direction === 'ascending' ? 1 : -1;
  const keyed = ordered.map((item) => ({ item, key: figure(item) * sign }));
  return keyed.sort((one, other) => one.key - other.key).map(({ item }) => item);
}

const kindOrder = Object.keys(itemKinds) as ItemKind[];

const figures: Readonly<Record<Exclude<ItemColumn, 'label'>, (item: Item) => number>> = {
  kind: ({ kind }) => kindOrder.indexOf(kind),
  state: ({ state }) => itemState.options.indexOf(state),
  quantity: ({ quantity }) => quantity,
  massG: ({ massG }) => massG,
  price: ({ price }) => toMajor(price),
  keyFigure: (item) => kindOrder.indexOf(item.kind) * aboveEveryFigure + keyAmount(item),
  mount: (item) => mount.options.indexOf(item.mount),
};

/** Keeps kinds apart: watts are not less than watt-hours. */
const aboveEveryFigure = 1e6;

/** The figure an item is told apart by, in the unit of its kind: the measured one where there is one. */
function keyAmount(item: Item): number {
  switch (item.kind) {
    case 'device':
      return labelWh(item.capacity);
    case 'bank':
      return item.measuredDeliverableWh?.value ?? labelWh(item.capacity);
    case 'panel':
      return item.measuredRatedW?.value ?? item.ratedW;
    case 'generator-hub':
      return item.power.as === 'rating'
        ? item.power.ratedW
        : Math.max(...item.power.points.map(({ powerW }) => powerW));
    case 'converter':
      return item.efficiency;
    case 'wall-charger':
      return item.totalW;
    case 'accessory':
      return 0;
  }
}
