/** Rider, bicycle and air, as the steady power balance needs them. */
export interface RideModel {
  /** Rider, bicycle, luggage and kit, kg. */
  readonly massKg: number;
  /** Drag area with the wheels' own, m2. */
  readonly dragAreaM2: number;
  readonly airDensityKgM3: number;
  /** Power at the wheel per power at the pedals, 0..1. */
  readonly drivetrainEfficiency: number;
  /** The rider brakes at this speed. */
  readonly downhillCapKmh: number;
}

/** The road under the wheels and the air along it. */
export interface Road {
  /** Rise over run: 0.05 is 5 %. */
  readonly grade: number;
  readonly rollingCoefficient: number;
  /** Wind along the road, m/s; against the rider above 0. */
  readonly headwindMs: number;
}

/** Gravity, m/s2: the value Martin et al. use. */
export const gravityMs2 = 9.81;
/** Wheel bearings: force 0.091 N plus 0.0087 N per m/s (Martin et al. 1998, eq. 7). */
const bearingN = 0.091;
const bearingNsPerM = 0.0087;

/** The steady parts of the power at the wheel, W. */
export interface PowerParts {
  readonly airW: number;
  readonly rollingW: number;
  readonly bearingsW: number;
  readonly slopeW: number;
}

/**
 * Steady power balance (Martin et al. 1998, J. Appl. Biomech. 14(3):276-291, eqs 4, 6, 7, 9).
 *
 * @param speedMs ground speed, m/s, 0 or more
 * @returns the parts at the wheel; slope power is negative downhill, air power with a wind that pushes
 */
export function powerParts(speedMs: number, road: Road, ride: RideModel): PowerParts {
  return {
    airW: airN(speedMs, road, ride) * speedMs,
    rollingW: rollingN(road, ride) * speedMs,
    bearingsW: bearingsN(speedMs) * speedMs,
    slopeW: slopeN(road, ride) * speedMs,
  };
}

/**
 * Rider power at the pedals for a steady speed, W. Negative where the bicycle would run faster without braking.
 *
 * @param speedMs ground speed, m/s, 0 or more
 * @param dragW extra drag at the wheel, W: a hub's
 */
export function riderPowerW(speedMs: number, road: Road, ride: RideModel, dragW = 0): number {
  const forceN = airN(speedMs, road, ride) + rollingN(road, ride) + bearingsN(speedMs) + slopeN(road, ride);
  return (forceN * speedMs + dragW) / ride.drivetrainEfficiency;
}

/** With a wind faster than the rider from behind, the air pushes: V_a |V_a|, not V_a squared. */
function airN(speedMs: number, { headwindMs }: Road, { airDensityKgM3, dragAreaM2 }: RideModel): number {
  const airSpeedMs = speedMs + headwindMs;
  return 0.5 * airDensityKgM3 * dragAreaM2 * airSpeedMs * Math.abs(airSpeedMs);
}

function rollingN({ rollingCoefficient, grade }: Road, { massKg }: RideModel): number {
  return (rollingCoefficient * massKg * gravityMs2) / Math.hypot(1, grade);
}

function bearingsN(speedMs: number): number {
  return bearingN + bearingNsPerM * speedMs;
}

/** sin(atan(grade)) = grade / sqrt(1 + grade^2). */
function slopeN({ grade }: Road, { massKg }: RideModel): number {
  return (massKg * gravityMs2 * grade) / Math.hypot(1, grade);
}
