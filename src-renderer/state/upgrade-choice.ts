import type { Item } from '../../shared-types/item.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import type { UpgradeBase, UpgradeLine } from '../../shared-types/upgrade.ts';

/** An item of the kit that is changed, and how many pieces of it are carried. */
export interface BaseLine {
  readonly item: Item;
  readonly quantity: number;
}

/** What the rider chose, or the kit as owned where that scenario is gone. */
export function baseIn(scenarios: readonly Scenario[], base: UpgradeBase): UpgradeBase {
  const isThere = base.as === 'owned' || scenarios.some(({ id }) => id === base.scenarioId);
  return isThere ? base : { as: 'owned' };
}

/** The kit that is changed: what can go out of it. */
export function baseLines(
  items: readonly Item[],
  scenarios: readonly Scenario[],
  base: UpgradeBase,
): readonly BaseLine[] {
  if (base.as === 'owned')
    return items
      .filter(({ kind, state }) => kind !== 'device' && state === 'owned')
      .map((item) => ({ item, quantity: item.quantity }));
  const kit = scenarios.find(({ id }) => id === base.scenarioId)?.kit ?? [];
  return kit.flatMap(({ itemId, quantity }) => {
    const item = items.find(({ id }) => id === itemId);
    return item === undefined || item.kind === 'device' || item.state === 'retired'
      ? []
      : [{ item, quantity }];
  });
}

/** What can come in: all in use but devices, what is considered first. */
export function offeredItems(items: readonly Item[]): readonly Item[] {
  const kit = items.filter(({ kind, state }) => kind !== 'device' && state !== 'retired');
  return [
    ...kit.filter(({ state }) => state === 'considering'),
    ...kit.filter(({ state }) => state !== 'considering'),
  ];
}

/** Chosen lines as far as they are still offered. */
export function stillOffered(
  lines: readonly UpgradeLine[],
  mostOf: (itemId: string) => number,
): readonly UpgradeLine[] {
  return lines.flatMap(({ itemId, quantity }) => {
    const most = mostOf(itemId);
    return most === 0 ? [] : [{ itemId, quantity: Math.min(most, quantity) }];
  });
}
