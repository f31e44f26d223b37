/**
 * Lithium cells are charged between these, degC (US Fire Administration after NFPA, usfa.fema.gov, "batteries": not below
 * freezing, not above 40 degC). Local rules and the maker's own limits go first.
 */
export const chargeFromDegC = 0;
export const chargeToDegC = 40;

/** Hours of a stretch of time in which cells outside may not be charged. */
export interface NoChargeHours {
  readonly tooColdH: number;
  readonly tooHotH: number;
}

/**
 * How long cells that lie outside in the shade, as cold and as warm as the air, are beyond the limits of charging.
 *
 * @param airDegC by step
 * @param stepHours length of a step
 */
export function noChargeHours(airDegC: Float64Array, stepHours: number): NoChargeHours {
  let [cold, hot] = [0, 0];
  for (const degC of airDegC) {
    if (degC < chargeFromDegC) cold += 1;
    if (degC > chargeToDegC) hot += 1;
  }
  return { tooColdH: cold * stepHours, tooHotH: hot * stepHours };
}
