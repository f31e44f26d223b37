import { powerParts, type PowerParts, type RideModel } from './power-balance.ts';
import type { Way } from './course.ts';
import { msPerKmh } from './solve-speed.ts';

/** Where the power goes, W, means over the riding time: the rider's, and what takes it. */
export interface PowerSplit extends PowerParts {
  /** At the pedals; nothing where the road alone would be faster. */
  readonly riderW: number;
  readonly drivetrainW: number;
  readonly hubW: number;
  readonly brakesW: number;
}

/**
 * Splits the power of a ride into its parts. Each moment balances, so the means do: rider = drivetrain + air + rolling +
 * bearings + slope + hub + brakes.
 *
 * @param speedKmh by way
 * @param hours by way, together above 0
 * @param dragW of the hub, by way
 */
export function meanPowerSplit(
  ways: readonly Way[],
  ride: RideModel,
  speedKmh: Float64Array,
  hours: Float64Array,
  dragW: Float64Array,
): PowerSplit {
  const split = {
    riderW: 0,
    drivetrainW: 0,
    hubW: 0,
    brakesW: 0,
    airW: 0,
    rollingW: 0,
    bearingsW: 0,
    slopeW: 0,
  };
  const all = hours.reduce((sum, each) => sum + each, 0);
  ways.forEach((way, index) => {
    const share = hours[index]! / all;
    const parts = splitOfWay(way, ride, speedKmh[index]!, dragW[index]!);
    for (const part of partNames) split[part] += share * parts[part];
  });
  return split;
}

const partNames = [
  'riderW',
  'drivetrainW',
  'hubW',
  'brakesW',
  'airW',
  'rollingW',
  'bearingsW',
  'slopeW',
] as const satisfies readonly (keyof PowerSplit)[];

function splitOfWay(way: Way, ride: RideModel, kmh: number, hubW: number): PowerSplit {
  const parts = powerParts(kmh * msPerKmh, way, ride);
  const wheelW = parts.airW + parts.rollingW + parts.bearingsW + parts.slopeW + hubW;
  const riderW = Math.max(0, wheelW) / ride.drivetrainEfficiency;
  return {
    ...parts,
    hubW,
    riderW,
    drivetrainW: riderW * (1 - ride.drivetrainEfficiency),
    brakesW: Math.max(0, -wheelW),
  };
}
