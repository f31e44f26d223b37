import type { Measure } from '../../../shared-types/field-log.ts';
import { itemDraft, labelWh, type Item } from '../../../shared-types/item.ts';
import { bankCapacityWh } from '../../model/storage/bank.ts';
import { decimal, inPercent } from '../assemble/words.ts';
import { promiseWord } from './hub-yield.ts';
import { measuredOn } from './kept-words.ts';

/** The field of an item that a measured value belongs in. */
export interface MeasuredField {
  /** As the form of the item calls it. */
  readonly name: string;
  /** What it holds now, in words. */
  readonly now: string;
  /** What it holds now; null when it holds nothing measured. */
  readonly value: number | null;
  /** From the unit of the estimate to that of the field. */
  readonly factor: number;
  put(value: number, on: string): Item;
}

/** Why a value has no field of its own. */
export interface NoField {
  readonly why: string;
}

/** The field that an estimate can be stored in. */
export function measuredField(item: Item, measure: Measure): MeasuredField | NoField {
  if (item.kind === 'bank')
    return measure === 'bank-efficiency' ? efficiencyField(item) : deliveryField(item);
  if (item.kind === 'device') return useField(item, measure);
  if (item.kind === 'panel') return powerField(item);
  if (item.kind === 'generator-hub' && measure === 'hub-yield') return yieldField(item);
  return {
    why: 'A hub has no one power: it rises with speed. Note the distance of each ride, and its yield can be stored.',
  };
}

const notMeasured = (label: string): string => `not measured: ${label}`;

function deliveryField(bank: Extract<Item, { kind: 'bank' }>): MeasuredField {
  const measured = bank.measuredDeliverableWh;
  const labelled = bankCapacityWh(labelWh(bank.capacity), bank.health, null, bank.efficiencyOut);
  return {
    name: 'Measured delivery',
    value: measured?.value ?? null,
    now:
      measured === null
        ? notMeasured(`label and losses make it ${decimal(labelled * bank.efficiencyOut, 1)} Wh`)
        : `${decimal(measured.value, 1)} Wh, ${measuredOn(measured.on)}`,
    factor: 1,
    put: (value, on) => ({ ...bank, measuredDeliverableWh: { value, on } }),
  };
}

function efficiencyField(bank: Extract<Item, { kind: 'bank' }>): MeasuredField {
  return {
    name: 'Efficiency in',
    value: bank.efficiencyIn,
    now: `${inPercent(bank.efficiencyIn)} in and ${inPercent(bank.efficiencyOut)} out`,
    // What comes out per Wh taken in is both losses together; the one on the way out stays as it is.
    factor: 1 / bank.efficiencyOut,
    put: (value) => ({ ...bank, efficiencyIn: value }),
  };
}

function powerField(panel: Extract<Item, { kind: 'panel' }>): MeasuredField {
  const measured = panel.measuredRatedW;
  return {
    name: 'Measured power',
    value: measured?.value ?? null,
    now:
      measured === null
        ? notMeasured(
            `rated ${decimal(panel.ratedW, 1)} W, regulator ${inPercent(panel.regulatorEfficiency)}`,
          )
        : `${decimal(measured.value, 1)} W, ${measuredOn(measured.on)}`,
    factor: 1,
    put: (value, on) => ({ ...panel, measuredRatedW: { value, on } }),
  };
}

function yieldField(hub: Extract<Item, { kind: 'generator-hub' }>): MeasuredField {
  const measured = hub.measuredYield;
  return {
    name: 'Measured yield',
    value: measured?.value ?? null,
    now:
      measured === null
        ? notMeasured(`all that its ${promiseWord(hub)} promises`)
        : `${inPercent(measured.value, 1)} of what its ${promiseWord(hub)} promises, ${measuredOn(measured.on)}`,
    factor: 1,
    put: (value, on) => ({ ...hub, measuredYield: { value, on } }),
  };
}

const activityFields = {
  'device-riding': ['ridingW', 'Riding'],
  'device-stop': ['stopW', 'At stops'],
  'device-evening': ['eveningW', 'Evening'],
  'device-night': ['nightW', 'Night'],
} as const;

function useField(device: Extract<Item, { kind: 'device' }>, measure: Measure): MeasuredField | NoField {
  const { use } = device;
  if (use.as === 'day') {
    if (measure !== 'device-day')
      return { why: 'Its use is planned by the day; plan it by activity to store this.' };
    return {
      name: 'Use a day',
      value: use.whPerDay,
      now: `${decimal(use.whPerDay, 1)} Wh a day`,
      factor: 1,
      put: (value) => ({ ...device, use: { as: 'day', whPerDay: value } }),
    };
  }
  if (!(measure in activityFields))
    return { why: 'Its use is planned by activity; plan it by the day to store this.' };
  const [key, name] = activityFields[measure as keyof typeof activityFields];
  return {
    name,
    value: use[key],
    now: `${decimal(use[key], 2)} W`,
    factor: 1,
    put: (value) => ({ ...device, use: { ...use, [key]: value } }),
  };
}

const digitsKept = 3;

/** A value as it is stored: a meter has no more digits than that. */
export function inDigitsKept(value: number): number {
  return Number(value.toPrecision(digitsKept));
}

/** Whether the catalogue takes an item as it is. */
export function isTaken({ id: _id, ...draft }: Item): boolean {
  return itemDraft.safeParse(draft).success;
}
