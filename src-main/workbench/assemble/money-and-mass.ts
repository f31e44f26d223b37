import type { Item } from '../../../shared-types/item.ts';
import type { Money } from '../../../shared-types/money.ts';
import { usualLifeYears } from '../../../shared-types/usual-life.ts';
import type { PricedLine } from '../../model/judge/priced-line.ts';
import type { WeighedLine } from '../../model/judge/mass.ts';
import type { CarriedItem } from './kit.ts';

/** The prices of a kit's lines. A hub brings its wheel with it. */
export function pricedLines(lines: readonly CarriedItem[]): readonly PricedLine[] {
  return lines.map(({ item, carried }) => ({
    itemId: item.id,
    label: item.label,
    carried,
    owned: item.state === 'owned' ? Math.min(carried, item.quantity) : 0,
    price: item.price,
    building: buildingOf(item),
    resale: item.resale,
    lifeYears: item.lifeYears ?? usualLifeYears[item.kind],
  }));
}

/** The masses of a kit's lines. A hub, its rim and spokes take the place of plain ones. */
export function weighedLines(lines: readonly CarriedItem[]): readonly WeighedLine[] {
  return lines.map(({ item, carried }) => ({
    itemId: item.id,
    label: item.label,
    kind: item.kind,
    quantity: carried,
    mount: item.mount,
    ...massesOf(item),
  }));
}

function buildingOf(item: Item): readonly Money[] {
  return item.kind === 'generator-hub' ? [item.rim.cost, item.spokes.cost, item.labour] : [];
}

function massesOf(item: Item): Pick<WeighedLine, 'massG' | 'replacesG'> {
  if (item.kind !== 'generator-hub') return { massG: item.massG, replacesG: 0 };
  return {
    massG: item.massG + item.rim.massG + item.spokes.massG,
    replacesG: item.replacesG + item.rim.replacesG + item.spokes.replacesG,
  };
}
