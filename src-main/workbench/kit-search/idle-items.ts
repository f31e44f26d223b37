import type { ItemKind } from '../../../shared-types/item.ts';
import type { Rules } from '../../../shared-types/scenario.ts';
import type { Kit, KitOption } from '../../model/judge/kit-search/kit-space.ts';
import type { SearchOption } from './search-options.ts';

/** What decides whether an item has anything to do. */
export interface IdleGround {
  readonly options: readonly SearchOption[];
  readonly rules: Pick<Rules, 'unsteadySource'>;
  /** A wall or a socket somewhere on the tour. */
  readonly hasOutlets: boolean;
  /** A device without a battery comes along: a hub runs it whatever the rule. */
  readonly hasDirectLoads: boolean;
}

/**
 * Whether a kit carries something that has no part in its energy: without it the kit has the same margin, costs and weighs less,
 * and is tried too. So it is beaten, and need not be walked.
 */
export function hasIdleItem(kit: Pick<Kit, 'counts'>, ground: IdleGround): boolean {
  const { options } = ground;
  const carries = (kind: ItemKind): boolean =>
    options.some(({ item }, option) => item.kind === kind && kit.counts[option]! > 0);
  const takesUnsteady = ground.rules.unsteadySource === 'device-too' || carries('bank');
  const hubGives =
    carries('generator-hub') && carries('converter') && (takesUnsteady || ground.hasDirectLoads);
  const works: Readonly<Record<ItemKind, boolean>> = {
    device: true,
    bank: true,
    panel: takesUnsteady,
    'generator-hub': hubGives,
    converter: hubGives,
    'wall-charger': ground.hasOutlets,
    accessory: false,
  };
  return options.some(
    (option, at) => kit.counts[at]! > option.least && !works[option.item.kind] && isBurden(option),
  );
}

/** Leaving it out is better in something and worse in nothing. */
function isBurden({ each }: Pick<KitOption, 'each'>): boolean {
  const figures = [each.toBuyMinor, each.grams, each.frontWheelGrams];
  return figures.every((figure) => figure >= 0) && figures.some((figure) => figure > 0);
}
