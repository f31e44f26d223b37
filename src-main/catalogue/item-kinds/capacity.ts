import type { LabelCapacity } from '../../../shared-types/item.ts';

/** A label capacity in one of its two forms, as the constraint `capacity_in_one_form` has it. */
export type CapacityColumns =
  | { readonly capacity_wh: number; readonly capacity_mah: null; readonly cell_v: null }
  | { readonly capacity_wh: null; readonly capacity_mah: number; readonly cell_v: number };

export function capacityColumns(capacity: LabelCapacity): CapacityColumns {
  return capacity.as === 'wh'
    ? { capacity_wh: capacity.wh, capacity_mah: null, cell_v: null }
    : { capacity_wh: null, capacity_mah: capacity.mAh, cell_v: capacity.cellV };
}

export function capacityOf(row: CapacityColumns): LabelCapacity {
  return row.capacity_wh === null
    ? { as: 'mah', mAh: row.capacity_mah, cellV: row.cell_v }
    : { as: 'wh', wh: row.capacity_wh };
}
