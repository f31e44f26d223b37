import type { Handlers } from '../../../shared-types/contract.ts';
import type { FieldLog, ItemEstimate, OnTour } from '../../../shared-types/field-log.ts';
import { failure, success } from '../../../shared-types/outcome.ts';
import type { Reading } from '../../../shared-types/reading.ts';
import type { Catalogue } from './fake-workbench.ts';

export const fakeToday = '2027-05-06';

type ReadingCalls = Pick<
  Handlers,
  'readings.log' | 'readings.save' | 'readings.remove' | 'readings.store' | 'readings.onTour'
>;

/** A field log in memory. Four lights, the future and estimates are plain enough to be told apart from the real ones. */
export function fakeReadings(held: Catalogue): ReadingCalls {
  const readings: Reading[] = [];
  let made = 0;
  return {
    'readings.log': () => success(logOf(readings)),
    'readings.save': ({ id = `reading-${++made}`, reading }) => {
      if (reading.on > fakeToday)
        return failure('bad-input', 'reading.on: allowed is a date up to today.', [
          { path: 'reading.on', allowed: 'a date up to today', got: reading.on },
        ]);
      const place = readings.findIndex((each) => each.id === id);
      const row = { ...reading, id };
      if (place === -1) readings.unshift(row);
      else readings[place] = row;
      return success(row);
    },
    'readings.remove': ({ id }) => {
      const place = readings.findIndex((each) => each.id === id);
      const [row] = place === -1 ? [] : readings.splice(place, 1);
      return row === undefined ? failure('not-found', `Nothing has the id ${id}.`) : success(row);
    },
    'readings.store': ({ itemId }) => {
      const place = held.items.findIndex(({ id }) => id === itemId);
      const before = held.items[place];
      if (before?.kind !== 'bank') return failure('not-found', 'There is no such bank.');
      const item = { ...before, measuredDeliverableWh: { value: 55, on: fakeToday } };
      held.items[place] = item;
      return success({ item, before, words: `Measured delivery: 55 Wh, measured on ${fakeToday}` });
    },
    'readings.onTour': () => success(fakeOnTour),
  };
}

function logOf(readings: readonly Reading[]): FieldLog {
  const itemIds = [...new Set(readings.map(({ itemId }) => itemId))];
  return { today: fakeToday, readings: [...readings], estimates: itemIds.map((id) => fakeEstimate(id)) };
}

export function fakeEstimate(itemId: string, change: Partial<ItemEstimate> = {}): ItemEstimate {
  return {
    itemId,
    measure: 'bank-delivery',
    name: 'Delivery at the plug, full to empty',
    unit: 'Wh',
    cells: [
      { readingId: 'one', on: '2027-05-01', low: 52, high: 56 },
      { readingId: 'two', on: '2027-05-03', low: 50, high: null },
      { readingId: 'three', on: '2027-05-05', low: 54, high: 54.5 },
    ],
    readings: 3,
    missing: 0,
    estimate: { value: 55, low: 51, high: 59 },
    catalogue: { value: 63, words: 'Label and losses' },
    basis: 'Counted by a meter.',
    offer: { as: 'open', field: 'Measured delivery', now: 'not measured' },
    ...change,
  };
}

export const fakeOnTour: OnTour = {
  day: 4,
  tourDays: 20,
  low: { days: 1.4, toTheEnd: false },
  usual: { days: 2.6, toTheEnd: false },
  good: { days: 3.9, toTheEnd: false },
  flatFirst: 'Navigation unit',
  wall: { inDays: 2.2, day: 6 },
  switchOff: [
    { label: 'Camera', role: 'nice-to-have', days: 0.8, toTheEnd: false },
    { label: 'Phone', role: 'must-have', days: 1.5, toTheEnd: false },
  ],
  stores: [],
  assumed: ['No wall is counted on, and no day stop.'],
};
