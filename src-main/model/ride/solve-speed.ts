import { riderPowerW, type RideModel } from './power-balance.ts';

/** m/s in one km/h. */
export const msPerKmh = 1 / 3.6;
/** Loaded tourers brake above this downhill (common practice, no source). */
export const downhillCapKmh = 45;
/** Below this a rider gets off and pushes at it (common practice, no source). */
export const walkingKmh = 4;

const solverSteps = 60;

/**
 * Steady speed at a given rider power, km/h.
 *
 * The power needed rises with speed wherever the rider must pedal, so a bisection between walking pace and the
 * downhill cap can't fail: uphill beyond the rider's power it answers walking pace, steep downhill the cap.
 *
 * @param riderW power at the pedals
 * @param grade rise over run
 * @param extraDragW drag at the wheel as a function of speed in km/h, W
 */
export function steadySpeedKmh(
  riderW: number,
  grade: number,
  ride: RideModel,
  extraDragW: (speedKmh: number) => number = () => 0,
): number {
  const surplusW = (kmh: number): number =>
    riderW - riderPowerW(kmh * msPerKmh, grade, ride, extraDragW(kmh));
  if (surplusW(walkingKmh) <= 0) return walkingKmh;
  if (surplusW(downhillCapKmh) >= 0) return downhillCapKmh;
  let slow = walkingKmh;
  let fast = downhillCapKmh;
  for (let i = 0; i < solverSteps; i += 1) {
    const middle = (slow + fast) / 2;
    if (surplusW(middle) > 0) slow = middle;
    else fast = middle;
  }
  return (slow + fast) / 2;
}
