/**
 * Share of capacity at which charging at full power begins to taper. Measured on one cell at 1C: 80 to 82 % of the
 * energy in the constant-current phase (Kollmeyer 2018, doi 10.17632/wykht8y7tg.1).
 */
export const taperStart = 0.8;

/** A store this full is unplugged at a wall: there a charge falls to a tenth of C (Kollmeyer 2018, doi 10.17632/wykht8y7tg.1). */
export const fullShare = 0.98;

/** Room over which a store tapers, Wh: of one battery, where spares are charged one after the other. */
export function taperRoomWh(batteryWh: number): number {
  return batteryWh * (1 - taperStart);
}

/**
 * Energy stored after charging for a while: constant power up to the taper, then falling with the room left. A source
 * weaker than the store's own limit meets the taper later, where the falling limit crosses its power.
 *
 * Closed form, so one long step ends where many short ones do.
 *
 * @param storedWh now, 0..capacityWh
 * @param capacityWh 0 or more; at 0 nothing is stored
 * @param roomWh room left when the taper of a full-power charge begins, 0..capacityWh
 * @param powerW into the cells, 0 or more
 * @param limitW most the store takes when empty; powerW above it counts as limitW
 * @param hours 0 or more
 * @returns storedWh..capacityWh
 */
export function storedAfterWh(
  storedWh: number,
  capacityWh: number,
  roomWh: number,
  powerW: number,
  limitW: number,
  hours: number,
): number {
  const power = powerW < limitW ? powerW : limitW;
  if (power <= 0 || storedWh >= capacityWh) return storedWh;
  const fullPowerUntilWh = capacityWh - roomWh * (power / limitW);
  const atFullPowerWh = storedWh + power * hours;
  if (atFullPowerWh <= fullPowerUntilWh) return atFullPowerWh;
  const fromWh = storedWh > fullPowerUntilWh ? storedWh : fullPowerUntilWh;
  const taperHours = hours - (fromWh - storedWh) / power;
  return capacityWh - (capacityWh - fromWh) * Math.exp((-limitW * taperHours) / roomWh);
}
