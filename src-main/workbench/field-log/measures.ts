import type { ItemEstimate } from '../../../shared-types/field-log.ts';
import { labelWh, type Item, type ItemOf } from '../../../shared-types/item.ts';
import { during, meterWh, type Reading, type ReadingOf } from '../../../shared-types/reading.ts';
import { countedWh, fallBetween, fullnessOfShare, quotient, times } from '../../model/field-log/cells.ts';
import type { Cell } from '../../model/field-log/mean-of-cells.ts';
import { fullnessOf } from './fullness.ts';

/** A reading with what it tells of the value. */
export interface ReadCell {
  readonly reading: Reading;
  readonly cell: Cell;
}

/** A value that readings of one item measure straight. */
export interface Measured extends Pick<ItemEstimate, 'measure' | 'name' | 'unit' | 'basis'> {
  /** By date, the oldest first. */
  readonly cells: readonly ReadCell[];
}

const hoursADay = 24;

/** What the readings of an item measure, each value from its own readings; those come with the newest first. */
export function measuredOf(item: Item, readings: readonly Reading[]): readonly Measured[] {
  const own = readings.filter(({ itemId }) => itemId === item.id).toReversed();
  const byDate = own.toSorted((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
  if (item.kind === 'bank') return bankMeasured(item, byDate);
  if (item.kind === 'device') return deviceMeasured(item, byDate);
  if (item.kind === 'panel') return panelMeasured(byDate);
  return item.kind === 'generator-hub' ? hubMeasured(byDate) : [];
}

function formed<K extends Reading['as']>(readings: readonly Reading[], as: K): readonly ReadingOf<K>[] {
  return readings.filter((reading): reading is ReadingOf<K> => reading.as === as);
}

/** Wh for a whole charge: what was counted over the part of the charge that passed. */
export function intakeCells(bank: ItemOf<'bank'>, readings: readonly Reading[]): readonly ReadCell[] {
  return formed(readings, 'intake')
    .filter(({ itemId }) => itemId === bank.id)
    .map((reading) => {
      const [before, after] = [
        fullnessOf(reading.before, bank.lights),
        fullnessOf(reading.after, bank.lights),
      ];
      return { reading, cell: quotient(countedWh(meterWh(reading.energy)), fallBetween(after, before)) };
    });
}

function bankMeasured(bank: ItemOf<'bank'>, readings: readonly Reading[]): readonly Measured[] {
  const cells = formed(readings, 'delivery').map((reading) => {
    const [before, after] = [fullnessOf(reading.before, bank.lights), fullnessOf(reading.after, bank.lights)];
    return { reading, cell: quotient(countedWh(meterWh(reading.energy)), fallBetween(before, after)) };
  });
  return [
    {
      measure: 'bank-delivery',
      name: 'Delivery at the plug, full to empty',
      unit: 'Wh',
      basis: 'Counted by a meter over the part of its charge that was drawn; lights count as ranges.',
      cells,
    },
  ];
}

const duringWords = {
  riding: 'Use while riding',
  stop: 'Use at stops',
  evening: 'Use in the evening',
  night: 'Use at night',
  day: 'Use on a whole day',
} as const;

function deviceMeasured(device: ItemOf<'device'>, readings: readonly Reading[]): readonly Measured[] {
  const batteryWh = labelWh(device.capacity) * device.health;
  const used = formed(readings, 'use');
  return during.options.flatMap((part): readonly Measured[] => {
    const cells = used
      .filter((reading) => reading.during === part)
      .map((reading) => ({ reading, cell: useCell(reading, batteryWh, part === 'day' ? hoursADay : 1) }));
    if (cells.length === 0) return [];
    return [
      {
        measure: `device-${part}`,
        name: duringWords[part],
        unit: part === 'day' ? 'Wh a day' : 'W',
        basis:
          'Per cent before and after, of its label capacity times its health, over the hours; Wh per hour is W.',
        cells,
      },
    ];
  });
}

function useCell(reading: ReadingOf<'use'>, batteryWh: number, hours: number): Cell {
  const fall = fallBetween(fullnessOfShare(reading.beforeShare), fullnessOfShare(reading.afterShare));
  return times(fall, (batteryWh / reading.hours) * hours);
}

function yieldCells(readings: readonly ReadingOf<'sun' | 'ride'>[]): readonly ReadCell[] {
  return readings.map((reading) => ({
    reading,
    cell: times(countedWh(meterWh(reading.energy)), 1 / reading.hours),
  }));
}

function panelMeasured(readings: readonly Reading[]): readonly Measured[] {
  return [
    {
      measure: 'panel-power',
      name: 'Power at the plug in full sun',
      unit: 'W',
      basis:
        'Wh per hour of full sun, which is W; taken as read at 1000 W/m², so less light makes it too low.',
      cells: yieldCells(formed(readings, 'sun')),
    },
  ];
}

function hubMeasured(readings: readonly Reading[]): readonly Measured[] {
  return [
    {
      measure: 'hub-power',
      name: 'Power at the plug while riding',
      unit: 'W',
      basis: 'Wh per hour ridden, which is W, at whatever speeds were ridden.',
      cells: yieldCells(formed(readings, 'ride')),
    },
  ];
}
