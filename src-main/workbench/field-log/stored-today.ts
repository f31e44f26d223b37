import type { StoreNow } from '../../../shared-types/field-log.ts';
import type { Item } from '../../../shared-types/item.ts';
import type { Reading } from '../../../shared-types/reading.ts';
import { fullnessOfShare, type Fullness } from '../../model/field-log/cells.ts';
import type { StopKit } from '../stop-plan/stop-kit.ts';
import { fullnessOf } from './fullness.ts';
import { lightsOf } from './reading-faults.ts';

/** Without a reading a store may be anything from empty to full. */
const unread: Fullness = { low: 0, high: 1 };

/** What each store holds now, by the last of today's readings of its item; all its pieces are taken to be alike. */
export function storedToday(
  pieces: StopKit['pieces'],
  items: readonly Item[],
  readings: readonly Reading[],
  today: string,
): readonly StoreNow[] {
  return pieces.map(({ itemId, copy, store: { label, rank, capacityWh } }) => {
    const item = items.find(({ id }) => id === itemId);
    const fullness = item === undefined ? null : fullnessToday(item, readings, today);
    const { low, high } = fullness ?? unread;
    return {
      ...{ itemId, copy, label, role: rank, capacityWh },
      lowWh: low * capacityWh,
      usualWh: ((low + high) / 2) * capacityWh,
      highWh: high * capacityWh,
      isRead: fullness !== null,
    };
  });
}

/** The newest reading of today that says how full an item is at its end; null when there is none. */
function fullnessToday(item: Item, readings: readonly Reading[], today: string): Fullness | null {
  const own = readings.filter(({ itemId, on }) => itemId === item.id && on === today);
  const ends = own.map((reading) => fullnessAfter(reading, lightsOf(item)));
  return ends.find((end) => end !== null) ?? null;
}

function fullnessAfter(reading: Reading, lights: number): Fullness | null {
  switch (reading.as) {
    case 'charge':
      return fullnessOf(reading.state, lights);
    case 'delivery':
    case 'intake':
      return fullnessOf(reading.after, lights);
    case 'use':
      return fullnessOfShare(reading.afterShare);
    case 'sun':
    case 'ride':
      return null;
  }
}
