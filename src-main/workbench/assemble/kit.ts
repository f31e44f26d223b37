import { labelWh, type Item, type ItemKind, type ItemOf } from '../../../shared-types/item.ts';
import type { Scenario } from '../../../shared-types/scenario.ts';
import { bankCapacityWh, selfDischargePerDay, type BankModel } from '../../model/storage/bank.ts';
import type { RidesWhere } from '../../model/storage/cell-warmth.ts';
import type { ChargerModel } from '../../model/storage/charger.ts';
import { deviceEfficiencyIn, useByActivityW, type DeviceModel } from '../../model/storage/device.ts';
import type { PanelModel } from '../../model/sun/panel.ts';

/** An item of the catalogue and how many are carried. */
export interface CarriedItem<I extends Item = Item> {
  readonly item: I;
  readonly carried: number;
}

/** The items a scenario carries; retired ones and devices stay out (devices belong to the tour). */
export function carriedItems(scenario: Scenario, items: readonly Item[]): readonly CarriedItem[] {
  const byId = new Map(items.map((item) => [item.id, item]));
  return scenario.kit.flatMap(({ itemId, quantity }) => {
    const item = byId.get(itemId);
    return item === undefined || item.state === 'retired' || item.kind === 'device'
      ? []
      : [{ item, carried: quantity }];
  });
}

function isKind<K extends ItemKind>(item: Item, kind: K): item is ItemOf<K> {
  return item.kind === kind;
}

/** The lines of one kind, typed as that kind. */
export function ofKind<K extends ItemKind>(
  lines: readonly CarriedItem[],
  kind: K,
): readonly CarriedItem<ItemOf<K>>[] {
  return lines.flatMap(({ item, carried }) => (isKind(item, kind) ? [{ item, carried }] : []));
}

/** The devices that come along: owned, and not left at home. */
export function travellingItems(
  items: readonly Item[],
  leftAtHome: readonly string[],
): readonly ItemOf<'device'>[] {
  const left = new Set(leftAtHome);
  return items
    .filter((item) => isKind(item, 'device'))
    .filter((item) => item.state === 'owned' && !left.has(item.id));
}

/** Each piece of them as the model has it. */
export function travellingDevices(
  items: readonly Item[],
  leftAtHome: readonly string[],
): readonly DeviceModel[] {
  return travellingItems(items, leftAtHome).flatMap((item) =>
    copies(item.quantity, (copy) => deviceModel(item, copy)),
  );
}

function copies<T>(quantity: number, make: (copy: number) => T): T[] {
  return Array.from({ length: quantity }, (_, copy) => make(copy));
}

function ridesWhere({ mount }: Item): RidesWhere {
  return mount === 'body' ? 'on-rider' : 'on-bicycle';
}

const keyOf = (item: Item, copy: number): string => `${item.id}#${copy}`;

/** A spare battery counts as capacity: the rider swaps it in when the first is empty. */
function deviceModel(item: ItemOf<'device'>, copy: number): DeviceModel {
  const batteryWh = labelWh(item.capacity) * item.health;
  return {
    label: item.label,
    key: keyOf(item, copy),
    mustHave: item.importance === 'must-have',
    capacityWh: batteryWh * (1 + item.spareBatteries),
    batteryWh,
    input: item.input,
    efficiencyIn: deviceEfficiencyIn,
    pluggedW: item.pluggedW,
    ridesWhere: ridesWhere(item),
    useW: useByActivityW(item.use),
  };
}

export function bankModels(lines: readonly CarriedItem<ItemOf<'bank'>>[]): readonly BankModel[] {
  return lines.flatMap(({ item, carried }) =>
    copies(carried, (copy) => ({
      label: item.label,
      key: keyOf(item, copy),
      capacityWh: bankCapacityWh(
        labelWh(item.capacity),
        item.health,
        item.measuredDeliverableWh?.value ?? null,
        item.efficiencyOut,
      ),
      input: item.input,
      outputs: item.outputs,
      efficiencyIn: item.efficiencyIn,
      efficiencyOut: item.efficiencyOut,
      chargesWhileServing: item.chargesWhileServing,
      ridesWhere: ridesWhere(item),
      standbyW: item.standbyW,
      selfDischargePerDay: selfDischargePerDay(item.selfDischargePctPerMonth),
    })),
  );
}

export function chargerModels(
  lines: readonly CarriedItem<ItemOf<'wall-charger'>>[],
): readonly ChargerModel[] {
  return lines.flatMap(({ item, carried }) =>
    copies(carried, (copy) => ({ key: keyOf(item, copy), outputs: item.outputs, totalW: item.totalW })),
  );
}

export function panelModels(lines: readonly CarriedItem<ItemOf<'panel'>>[]): readonly PanelModel[] {
  return lines.flatMap(({ item, carried }) =>
    copies(carried, () => ({
      ratedW: item.ratedW,
      temperatureCoefficientPerK: item.temperatureCoefficientPctPerK / 100,
      noctDegC: item.noctDegC,
      startWm2: item.startWm2,
      outputW: item.output.powerW,
      // A measured power was read at the plug: the regulator's loss is in it already.
      ...(item.measuredRatedW === null
        ? { regulatorEfficiency: item.regulatorEfficiency }
        : { ratedW: item.measuredRatedW.value, regulatorEfficiency: 1 }),
    })),
  );
}
