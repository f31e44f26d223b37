import type { Item, ItemKind, ItemOf } from './item.ts';
import { labelWh } from './item.ts';
import { usualPlacement, usualRules, type Method, type ScenarioDraft } from './scenario.ts';

/** One of the three named methods, put together from what is in the catalogue, or why it can't be. */
export type ReadyMade = { readonly method: Exclude<Method, 'mix'> } & (
  { readonly draft: ScenarioDraft } | { readonly missing: string }
);

/**
 * The three named methods from what the rider owns or considers: banks filled at walls; the strongest panel with the largest bank
 * as its buffer; a hub with its converter and the same buffer. All take the chargers along, owned cables, and no more.
 */
export function readyMadeScenarios(items: readonly Item[]): readonly ReadyMade[] {
  const kit = kitFrom(items);
  return [banksOnly(kit), panelAndBuffer(kit), hubAndBuffer(kit)];
}

interface KitParts {
  readonly banks: readonly ItemOf<'bank'>[];
  readonly panel: ItemOf<'panel'> | undefined;
  readonly hub: readonly Item[];
  /** What every method takes along. */
  readonly always: readonly Item[];
}

function kitFrom(items: readonly Item[]): KitParts {
  const inUse = items.filter(({ state }) => state !== 'retired');
  const of = <K extends ItemKind>(kind: K): readonly ItemOf<K>[] =>
    inUse.filter((item): item is ItemOf<K> => item.kind === kind);
  const [hub] = ownedFirst(of('generator-hub'));
  const [converter] = ownedFirst(of('converter'));
  const cables = of('accessory');
  return {
    banks: ownedOrAll(of('bank')).toSorted((a, b) => labelWh(b.capacity) - labelWh(a.capacity)),
    panel: of('panel').toSorted((a, b) => b.ratedW - a.ratedW)[0],
    hub:
      hub === undefined || converter === undefined
        ? []
        : [hub, converter, ...cables.filter(({ forHub }) => forHub)],
    always: [
      ...ownedOrAll(of('wall-charger')),
      ...cables.filter(({ forHub, state }) => !forHub && state === 'owned'),
    ],
  };
}

function ownedFirst<I extends Item>(items: readonly I[]): readonly I[] {
  return items.toSorted((a, b) => Number(b.state === 'owned') - Number(a.state === 'owned'));
}

/** What is only considered takes part where nothing of its kind is owned. */
function ownedOrAll<I extends Item>(items: readonly I[]): readonly I[] {
  const owned = items.filter(({ state }) => state === 'owned');
  return owned.length > 0 ? owned : items;
}

function banksOnly({ banks, always }: KitParts): ReadyMade {
  if (banks.length === 0) return { method: 'banks', missing: 'There is no power bank.' };
  return { method: 'banks', draft: scenario('Banks only', 'banks', [...banks, ...always]) };
}

function panelAndBuffer({ panel, banks: [buffer], always }: KitParts): ReadyMade {
  if (panel === undefined) return { method: 'panel', missing: 'There is no panel.' };
  if (buffer === undefined)
    return { method: 'panel', missing: 'There is no power bank to buffer the panel.' };
  const kit = [panel, buffer, ...always];
  return { method: 'panel', draft: scenario('Panel + buffer bank', 'panel', kit) };
}

function hubAndBuffer({ hub, banks: [buffer], always }: KitParts): ReadyMade {
  if (hub.length === 0)
    return { method: 'hub', missing: 'There is no generator hub with a converter to charge from it.' };
  if (buffer === undefined) return { method: 'hub', missing: 'There is no power bank to buffer the hub.' };
  const kit = [...hub, buffer, ...always];
  return { method: 'hub', draft: scenario('Generator hub', 'hub', kit) };
}

function scenario(label: string, method: Method, kit: readonly Item[]): ScenarioDraft {
  return {
    ...{ label, method, placement: usualPlacement, rules: usualRules, notes: '' },
    kit: kit.map(({ id, kind, quantity }) => ({
      itemId: id,
      quantity: kind === 'generator-hub' || kind === 'converter' ? 1 : quantity,
    })),
  };
}
