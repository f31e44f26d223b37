import type { PricedLine } from '../../model/judge/cost.ts';
import type { WeighedLine } from '../../model/judge/mass.ts';
import type { CarriedItem } from './kit.ts';

/** The prices of a kit's lines. A hub brings the wheel building with it. */
export function pricedLines(lines: readonly CarriedItem[]): readonly PricedLine[] {
  return lines.map(({ item, carried }) => ({
    itemId: item.id,
    label: item.label,
    carried,
    owned: item.state === 'owned' ? Math.min(carried, item.quantity) : 0,
    prices: item.kind === 'generator-hub' ? [item.price, item.wheelBuild] : [item.price],
  }));
}

/** The masses of a kit's lines. A hub takes the place of a plain one. */
export function weighedLines(lines: readonly CarriedItem[]): readonly WeighedLine[] {
  return lines.map(({ item, carried }) => ({
    itemId: item.id,
    label: item.label,
    kind: item.kind,
    quantity: carried,
    mount: item.mount,
    massG: item.massG,
    replacesG: item.kind === 'generator-hub' ? item.replacesG : 0,
  }));
}
