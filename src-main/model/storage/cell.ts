import type { LabelCapacity } from '../../../shared-types/item.ts';

const mAhPerAh = 1000;

/** Label energy, Wh: as printed, or Ah x nominal cell voltage (3.7 V, not the 5 V of the plug). */
export function labelWh(capacity: LabelCapacity): number {
  return capacity.as === 'wh' ? capacity.wh : (capacity.mAh / mAhPerAh) * capacity.cellV;
}
