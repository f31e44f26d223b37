/** No lithium cell is charged below this, degC (US Fire Administration after NFPA, usfa.fema.gov, "batteries"). */
export const chargeFromDegC = 0;
/** Chargers stop above this cell temperature, degC: the usual limit of lithium cells, 0 to 45 degC. */
export const chargeToDegC = 45;
/** The same fire service advises against charging in more heat than this, degC; the maker's own limits go first. */
export const advisedToDegC = 40;

/** Whether cells of this temperature are charged at all. */
export function mayCharge(cellDegC: number): boolean {
  return cellDegC >= chargeFromDegC && cellDegC <= chargeToDegC;
}

/** Hours of a stretch of time in which cells outside should not be charged. */
export interface NoChargeHours {
  readonly tooColdH: number;
  readonly tooHotH: number;
}

/**
 * How long cells that lie outside in the shade, as cold and as warm as the air, are beyond what is advised for charging.
 *
 * @param airDegC by step
 * @param stepHours length of a step
 */
export function noChargeHours(airDegC: Float64Array, stepHours: number): NoChargeHours {
  let [cold, hot] = [0, 0];
  for (const degC of airDegC) {
    if (degC < chargeFromDegC) cold += 1;
    if (degC > advisedToDegC) hot += 1;
  }
  return { tooColdH: cold * stepHours, tooHotH: hot * stepHours };
}
