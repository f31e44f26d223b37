import type { Way } from './course.ts';
import type { GeneratorWheel } from './hub.ts';
import { riderPowerW, type RideModel } from './power-balance.ts';
import {
  asRecordedKmh,
  msPerKmh,
  noDrag,
  recordedPowerW,
  steadySpeedKmh,
  type DragAtSpeed,
} from './solve-speed.ts';

/** Who rides, W sustained at the pedals, and the bicycle without the kit compared. */
export interface Rider {
  readonly riderW: number;
  readonly bare: RideModel;
}

/** Speed on each way, km/h: solved for the rider's power, or as recorded where nothing is added. */
export function solveWays(
  ways: readonly Way[],
  rider: Rider,
  ride: RideModel,
  dragW: DragAtSpeed = noDrag,
): Float64Array {
  return Float64Array.from(ways, (way) => {
    if (way.recordedKmh === null) return steadySpeedKmh(rider.riderW, way, ride, dragW);
    if (ride === rider.bare) return way.recordedKmh;
    return asRecordedKmh(way.recordedKmh, powerOn(way, rider), way, rider.bare, ride, dragW);
  });
}

function powerOn(way: Way, { riderW, bare }: Rider): number {
  return way.recordedKmh === null ? riderW : recordedPowerW(way.recordedKmh, way, bare, riderW);
}

/** A speed this close below the start of a converter is held there: the solver ends closer, km/h. */
const heldWithinKmh = 1e-6;

/**
 * Share of the time on each way that the hub charges, 0..1: none below the converter's start, all above it.
 *
 * Where the rider is faster than the start with the hub off and slower with it on, the converter goes on and off at its start
 * speed: it charges for as much of the time as leaves the rider's power used up.
 *
 * @param speedKmh by way, solved with the hub charging
 */
export function chargingShares(
  ways: readonly Way[],
  rider: Rider,
  ride: RideModel,
  wheel: GeneratorWheel,
  speedKmh: Float64Array,
): Float64Array {
  const start = wheel.startSpeedKmh;
  if (start === null) return new Float64Array(ways.length);
  return speedKmh.map((kmh, index) => {
    if (kmh >= start) return 1;
    return start - kmh > heldWithinKmh ? 0 : shareAtStart(ways[index]!, rider, ride, wheel, start);
  });
}

function shareAtStart(
  way: Way,
  rider: Rider,
  ride: RideModel,
  { offW, onW }: GeneratorWheel,
  start: number,
): number {
  const needW = (dragW: number): number => riderPowerW(start * msPerKmh, way, ride, dragW);
  const off = needW(offW(start));
  const on = needW(onW(start));
  return on > off ? Math.min(1, Math.max(0, (powerOn(way, rider) - off) / (on - off))) : 0;
}
