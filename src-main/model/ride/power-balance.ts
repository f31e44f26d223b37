/** A rider and bicycle on the road, as the steady power balance needs them. */
export interface RideModel {
  /** Rider, bicycle, luggage and kit, kg. */
  readonly massKg: number;
  /** Drag area, m2. */
  readonly dragAreaM2: number;
  readonly rollingCoefficient: number;
  readonly airDensityKgM3: number;
  readonly drivetrainEfficiency: number;
}

/** Standard gravity, m/s2 (the value Martin et al. use). */
export const gravityMs2 = 9.81;
/** Wheel bearings: force 0.091 N plus 0.0087 N per m/s (Martin et al. 1998, eq. 7). */
const bearingN = 0.091;
const bearingNsPerM = 0.0087;
/** Chain efficiency (Martin et al. 1998, appendix). */
export const chainEfficiency = 0.976;
/** Upright rider with luggage: mean drag area of 557 intercepted cyclists in coast-down tests (Tengattini & Bigazzi). */
export const uprightDragAreaM2 = 0.559;

/** The steady parts of the power at the wheel, W. */
export interface PowerParts {
  readonly airW: number;
  readonly rollingW: number;
  readonly bearingsW: number;
  readonly slopeW: number;
}

/**
 * Steady power balance in calm air (Martin et al. 1998, J. Appl. Biomech. 14(3):276-291, eqs 4, 6, 7, 9).
 *
 * @param speedMs ground speed, m/s, 0 or more
 * @param grade rise over run: 0.05 is 5 %
 * @returns the parts at the wheel; slope power is negative downhill
 */
export function powerParts(speedMs: number, grade: number, ride: RideModel): PowerParts {
  const slopeRad = Math.atan(grade);
  const weightN = ride.massKg * gravityMs2;
  return {
    airW: 0.5 * ride.airDensityKgM3 * ride.dragAreaM2 * speedMs ** 3,
    rollingW: ride.rollingCoefficient * weightN * Math.cos(slopeRad) * speedMs,
    bearingsW: speedMs * (bearingN + bearingNsPerM * speedMs),
    slopeW: weightN * Math.sin(slopeRad) * speedMs,
  };
}

/** Rider power at the pedals for a steady speed, W, with an extra drag at the wheel (a hub's). Negative when coasting would speed up. */
export function riderPowerW(speedMs: number, grade: number, ride: RideModel, extraDragW = 0): number {
  const parts = powerParts(speedMs, grade, ride);
  return (
    (parts.airW + parts.rollingW + parts.bearingsW + parts.slopeW + extraDragW) / ride.drivetrainEfficiency
  );
}
