import { fullShare } from './taper.ts';

/**
 * How long an empty store is on the plug until a wall leaves it alone, h: the inverse of `storedAfterWh`.
 *
 * @param capacityWh 0 or more; at 0 there is nothing to fill
 * @param roomWh room left when the taper of a full-power charge begins, 0..capacityWh
 * @param powerW into the cells, above 0
 * @param limitW most the store takes when empty, above 0; powerW above it counts as limitW
 */
export function hoursToFull(capacityWh: number, roomWh: number, powerW: number, limitW: number): number {
  const power = Math.min(powerW, limitW);
  const fullWh = capacityWh * fullShare;
  const taperRoomWh = roomWh * (power / limitW);
  const taperFromWh = capacityWh - taperRoomWh;
  if (fullWh <= taperFromWh) return fullWh / power;
  return taperFromWh / power + (roomWh / limitW) * Math.log(taperRoomWh / (capacityWh - fullWh));
}
