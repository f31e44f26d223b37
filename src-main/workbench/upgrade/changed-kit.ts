import type { Item } from '../../../shared-types/item.ts';
import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import { usualPlacement, usualRules, type Scenario } from '../../../shared-types/scenario.ts';
import type { UpgradeBase, UpgradeLine, UpgradeQuestion } from '../../../shared-types/upgrade.ts';

/** A kit before and after a change. */
export interface ChangedKit {
  /** In words: `the kit as owned`. */
  readonly base: string;
  readonly before: Scenario;
  readonly after: Scenario;
}

/** The kits of a question; what cannot be changed so is said with its line. */
export function changedKit(
  question: Pick<UpgradeQuestion, 'base' | 'add' | 'remove'>,
  items: readonly Item[],
  scenarios: readonly Scenario[],
): Outcome<ChangedKit> {
  const { base, add, remove } = question;
  const before = baseOf(base, items, scenarios);
  if (before === null) return failure('not-found', 'That scenario is not in the catalogue (any more).');
  if (add.length + remove.length === 0)
    return refused('add', 'at least one item that comes in or goes out', 'nothing');
  const fault =
    faultIn('add', add, items) ?? faultIn('remove', remove, items) ?? missing(before, remove, items);
  if (fault !== null) return fault;
  return success({
    base: base.as === 'owned' ? 'the kit as owned' : before.label,
    before,
    after: { ...before, kit: kitWith(before.kit, add, remove) },
  });
}

/** All that is owned but devices, used as is usual; or a scenario without what has been retired since. */
function baseOf(base: UpgradeBase, items: readonly Item[], scenarios: readonly Scenario[]): Scenario | null {
  if (base.as === 'scenario') {
    const scenario = scenarios.find(({ id }) => id === base.scenarioId);
    const inUse = new Set(items.filter(({ state }) => state !== 'retired').map(({ id }) => id));
    return scenario === undefined
      ? null
      : { ...scenario, kit: scenario.kit.filter(({ itemId }) => inUse.has(itemId)) };
  }
  const owned = items.filter(({ kind, state }) => kind !== 'device' && state === 'owned');
  return {
    id: 'as-owned',
    label: 'As owned',
    method: 'mix',
    kit: owned.map(({ id, quantity }) => ({ itemId: id, quantity })),
    placement: usualPlacement,
    rules: usualRules,
    notes: '',
  };
}

type Side = 'add' | 'remove';

function faultIn(side: Side, lines: readonly UpgradeLine[], items: readonly Item[]) {
  for (const [at, { itemId }] of lines.entries()) {
    const item = items.find(({ id }) => id === itemId);
    const path = `${side}.${at}.itemId`;
    if (item === undefined) return refused(path, 'an item of the catalogue', itemId);
    if (item.kind === 'device')
      return refused(path, 'an item of the kit; devices belong to the tours', item.label);
    if (item.state === 'retired' && side === 'add')
      return refused(path, 'an item that is owned or considered', `${item.label}, which is retired`);
  }
  return null;
}

/** Nothing can go out that is not there. */
function missing({ kit }: Scenario, remove: readonly UpgradeLine[], items: readonly Item[]) {
  for (const [at, { itemId, quantity }] of remove.entries()) {
    const carried = kit.find((line) => line.itemId === itemId)?.quantity ?? 0;
    const label = items.find(({ id }) => id === itemId)?.label ?? itemId;
    if (quantity > carried)
      return refused(
        `remove.${at}.quantity`,
        `at most ${carried} of ${label}, as the kit carries`,
        String(quantity),
      );
  }
  return null;
}

function refused(path: string, allowed: string, got: string) {
  return failure('bad-input', `${path}: allowed is ${allowed}.`, [{ path, allowed, got }]);
}

function kitWith(
  kit: Scenario['kit'],
  add: readonly UpgradeLine[],
  remove: readonly UpgradeLine[],
): Scenario['kit'] {
  const counts = new Map(kit.map(({ itemId, quantity }) => [itemId, quantity]));
  const change = (by: 1 | -1, lines: readonly UpgradeLine[]): void => {
    for (const { itemId, quantity } of lines) counts.set(itemId, (counts.get(itemId) ?? 0) + by * quantity);
  };
  change(1, add);
  change(-1, remove);
  return [...counts].flatMap(([itemId, quantity]) => (quantity > 0 ? [{ itemId, quantity }] : []));
}
