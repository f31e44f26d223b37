import type { DeviceUse } from '../../../shared-types/item.ts';
import type { ReadDb, WriteDb } from '../connection.ts';
import { insertRow, selectOwned } from '../statements.ts';
import { capacityColumns, capacityOf, type CapacityColumns } from './capacity.ts';
import type { KindPart } from './kind-part.ts';
import { readInput, writeInput } from './ports.ts';

type Device = KindPart<'device'>;

/** Use by activity or by day, never both: the constraint `use_in_one_form`. */
type UseColumns =
  | {
      readonly use_riding_w: number;
      readonly use_stop_w: number;
      readonly use_evening_w: number;
      readonly use_night_w: number;
      readonly use_wh_per_day: null;
    }
  | { readonly use_riding_w: null; readonly use_wh_per_day: number };

type DeviceRow = CapacityColumns &
  UseColumns & {
    readonly health: number;
    readonly spare_batteries: number;
    readonly plugged_w: number;
    readonly importance: Device['importance'];
  };

export function writeDevice(write: WriteDb, itemId: string, device: Device): void {
  const row: DeviceRow = {
    ...capacityColumns(device.capacity),
    ...useColumns(device.use),
    health: device.health,
    spare_batteries: device.spareBatteries,
    plugged_w: device.pluggedW,
    importance: device.importance,
  };
  insertRow(write, 'devices', { item_id: itemId, ...row });
  writeInput(write, itemId, device.input);
}

export function readDevice(read: ReadDb, itemId: string): Device {
  const row = selectOwned(read, 'SELECT * FROM devices WHERE item_id = ?', itemId) as DeviceRow;
  return {
    kind: 'device',
    capacity: capacityOf(row),
    health: row.health,
    spareBatteries: row.spare_batteries,
    input: readInput(read, itemId),
    use: useOf(row),
    pluggedW: row.plugged_w,
    importance: row.importance,
  };
}

function useColumns(use: DeviceUse): UseColumns {
  if (use.as === 'day') return { use_riding_w: null, use_wh_per_day: use.whPerDay };
  return {
    use_riding_w: use.ridingW,
    use_stop_w: use.stopW,
    use_evening_w: use.eveningW,
    use_night_w: use.nightW,
    use_wh_per_day: null,
  };
}

function useOf(row: UseColumns): DeviceUse {
  if (row.use_riding_w === null) return { as: 'day', whPerDay: row.use_wh_per_day };
  return {
    as: 'activity',
    ridingW: row.use_riding_w,
    stopW: row.use_stop_w,
    eveningW: row.use_evening_w,
    nightW: row.use_night_w,
  };
}
