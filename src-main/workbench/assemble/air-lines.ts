import { fliesAsPacked, type AirLine } from '../../../shared-types/air-check.ts';
import { labelWh, type Item, type ItemOf } from '../../../shared-types/item.ts';
import type { Scenario } from '../../../shared-types/scenario.ts';
import type { Tour } from '../../../shared-types/tour.ts';
import { airCheck } from '../../model/judge/air-transport.ts';
import { carriedItems, ofKind, travellingItems, type CarriedItem } from './kit.ts';

/** The batteries that a rider packs: the banks of a kit, and the devices that come along with their spares. */
export function airLines(
  lines: readonly CarriedItem[],
  items: readonly Item[],
  leftAtHome: readonly string[],
): readonly AirLine[] {
  return [
    ...ofKind(lines, 'bank').map(bankLine),
    ...travellingItems(items, leftAtHome).flatMap(deviceLines),
  ].filter((line) => line.labelWh > 0 && line.count > 0);
}

/** Whether a tour's batteries may fly as a scenario packs them, by the rules listed. */
export function scenarioFlies(
  scenario: Scenario,
  { items, tour }: { readonly items: readonly Item[]; readonly tour: Tour },
): boolean {
  return fliesAsPacked(airCheck(airLines(carriedItems(scenario, items), items, tour.leftAtHome)));
}

function bankLine({ item, carried }: CarriedItem<ItemOf<'bank'>>): AirLine {
  return { label: item.label, kind: 'power-bank', count: carried, labelWh: labelWh(item.capacity) };
}

/** Each piece brings its own spares. A load without a battery has a capacity of 0. */
function deviceLines({ label, quantity, capacity, spareBatteries }: ItemOf<'device'>): readonly AirLine[] {
  const battery = { label, labelWh: labelWh(capacity) };
  return [
    { ...battery, kind: 'in-device', count: quantity },
    { ...battery, kind: 'spare-battery', count: quantity * spareBatteries },
  ];
}
