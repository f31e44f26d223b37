import { riderPowerW, type RideModel, type Road } from './power-balance.ts';

/** m/s in one km/h. */
export const msPerKmh = 1 / 3.6;
/** Where riding would be slower than this, the rider gets off and pushes at this pace (common practice, no source). */
export const walkingKmh = 4;

/** Halvings of a bracket of at most 120 km/h: to below 1e-9 km/h. */
const halvings = 37;

/** Drag at the wheel, W, at a speed in km/h. */
export type DragAtSpeed = (speedKmh: number) => number;
export const noDrag: DragAtSpeed = () => 0;

/**
 * Steady speed at a given rider power, km/h: from walking pace, where the rider pushes, to the downhill cap, where the rider
 * brakes. The bracket always holds an answer, whatever the grade, wind or drag.
 *
 * @param riderW power at the pedals, 0 or more
 */
export function steadySpeedKmh(
  riderW: number,
  road: Road,
  ride: RideModel,
  dragW: DragAtSpeed = noDrag,
): number {
  return speedWithinKmh(walkingKmh, ride.downhillCapKmh, riderW, road, ride, dragW);
}

/** Up to this share of the sustained power a rider holds a recorded speed against a little more drag (common practice, no source). */
const easyShare = 0.5;

/** Power with which a road was ridden at a recorded speed, or the power that keeps an easy speed; at the pedals, W. */
export function recordedPowerW(recordedKmh: number, road: Road, bare: RideModel, sustainedW: number): number {
  return Math.max(easyShare * sustainedW, riderPowerW(recordedKmh * msPerKmh, road, bare));
}

/**
 * How a road ridden at a recorded speed is ridden with more mass or drag at the same power.
 *
 * Where it took under half the rider's power, braking or rolling included, the speed was chosen (a descent, traffic, a rest):
 * it is kept as long as half the power keeps it. At or below walking pace it stays, too.
 *
 * @param recordedKmh speed on this road as `bare` was ridden
 * @param powerW from `recordedPowerW`
 */
export function asRecordedKmh(
  recordedKmh: number,
  powerW: number,
  road: Road,
  bare: RideModel,
  ride: RideModel,
  dragW: DragAtSpeed = noDrag,
): number {
  const recordedMs = recordedKmh * msPerKmh;
  const wasEasy = riderPowerW(recordedMs, road, bare) < powerW;
  const holds = riderPowerW(recordedMs, road, ride, dragW(recordedKmh)) <= powerW;
  if (recordedKmh <= walkingKmh || (wasEasy && holds)) return recordedKmh;
  return speedWithinKmh(walkingKmh, Math.max(recordedKmh, ride.downhillCapKmh), powerW, road, ride, dragW);
}

/**
 * Bisection. Where the power needed is below the rider's at both ends, or above at both, the nearer end is the answer. Drag may
 * jump where a converter starts: the answer is then the speed just below the jump.
 */
function speedWithinKmh(
  slowest: number,
  fastest: number,
  riderW: number,
  road: Road,
  ride: RideModel,
  dragW: DragAtSpeed,
): number {
  const spare = (kmh: number): boolean => riderPowerW(kmh * msPerKmh, road, ride, dragW(kmh)) < riderW;
  if (!spare(slowest)) return slowest;
  if (spare(fastest)) return fastest;
  let slow = slowest;
  let fast = fastest;
  for (let i = 0; i < halvings; i += 1) {
    const middle = (slow + fast) / 2;
    if (spare(middle)) slow = middle;
    else fast = middle;
  }
  return slow;
}
