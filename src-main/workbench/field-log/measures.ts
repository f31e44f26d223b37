import type { ItemEstimate } from '../../../shared-types/field-log.ts';
import { labelWh, type Item, type ItemOf } from '../../../shared-types/item.ts';
import { during, meterWh, type Reading, type ReadingOf } from '../../../shared-types/reading.ts';
import { countedWh, fallBetween, fullnessOfShare, quotient, times } from '../../model/field-log/cells.ts';
import type { Cell } from '../../model/field-log/mean-of-cells.ts';
import { decimal, inPercent } from '../assemble/words.ts';
import { cellDegC, cellPowerW } from '../../model/sun/panel.ts';
import { panelModels } from '../assemble/kit.ts';
import { fullnessOf } from './fullness.ts';
import { yieldMeasured, type PlugConverter } from './hub-yield.ts';

/** A reading with what it tells of the value. */
export interface ReadCell {
  readonly reading: Reading;
  readonly cell: Cell;
}

/** A value that readings of one item measure straight. */
export interface Measured extends Pick<ItemEstimate, 'measure' | 'name' | 'basis'> {
  /** By date, the oldest first. */
  readonly cells: readonly ReadCell[];
}

const hoursADay = 24;

/** What the readings of an item measure, each value from its own readings; those come with the newest first. */
export function measuredOf(
  item: Item,
  readings: readonly Reading[],
  converter: PlugConverter,
): readonly Measured[] {
  const own = readings.filter(({ itemId }) => itemId === item.id).toReversed();
  const byDate = own.toSorted((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
  if (item.kind === 'bank') return bankMeasured(item, byDate);
  if (item.kind === 'device') return deviceMeasured(item, byDate);
  if (item.kind === 'panel') return panelMeasured(item, byDate);
  return item.kind === 'generator-hub' ? hubMeasured(item, byDate, converter) : [];
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

/** Light of full sun, as ratings have it. */
const fullSunWm2 = 1000;
/** Air on a sunny day, as the nominal cell temperature has it; 10 K more or less move the power by some 4 %. */
const sunnyAirDegC = 20;

/**
 * A rating is for cells at 25 °C, and the comparison takes the heat of the sun off it. So the heat that the reading had is put
 * back on: else it would count twice.
 */
function panelMeasured(panel: ItemOf<'panel'>, readings: readonly Reading[]): readonly Measured[] {
  const cells = cellDegC(fullSunWm2, sunnyAirDegC, panel.noctDegC);
  const warmShare = warmShareOf(panel, cells);
  return [
    {
      measure: 'panel-power',
      name: 'Power at the plug in full sun, cells at 25 °C',
      basis: `Wh per hour of full sun, which is W, over the ${inPercent(warmShare)} that cells at ${decimal(cells)} °C give; taken as read at ${decimal(fullSunWm2)} W/m² and ${sunnyAirDegC} °C in the air, so less light makes it too low.`,
      cells: yieldCells(formed(readings, 'sun')).map(({ reading, cell }) => ({
        reading,
        cell: times(cell, 1 / warmShare),
      })),
    },
  ];
}

/** What is left of a panel's power in full sun when its cells are so warm, 0..1. */
function warmShareOf(panel: ItemOf<'panel'>, warmDegC: number): number {
  const [model] = panelModels([{ item: panel, carried: 1 }]);
  return cellPowerW(fullSunWm2, warmDegC, { ...model!, ratedW: 1 });
}

function hubMeasured(
  hub: ItemOf<'generator-hub'>,
  readings: readonly Reading[],
  converter: PlugConverter,
): readonly Measured[] {
  const rides = formed(readings, 'ride');
  return [
    yieldMeasured(hub, rides, converter),
    {
      measure: 'hub-power',
      name: 'Power at the plug while riding',
      basis: 'Wh per hour ridden, which is W, at whatever speeds were ridden.',
      cells: yieldCells(rides),
    },
  ];
}
