import { radPerDeg } from '../angle.ts';

/** What reaches a horizontal plane during one step, mean W/m2. */
export interface HorizontalLight {
  readonly globalWm2: Float64Array;
  readonly diffuseWm2: Float64Array;
}

const sixtyDegRad = 60 * radPerDeg;

/**
 * Ratio of hourly to daily global radiation (Collares-Pereira & Rabl 1979, Solar Energy 22:155-164), per hour.
 *
 * @param hourAngleRad middle of the hour, 0 at noon
 * @param sunsetRad sunset hour angle, above 0
 * @returns 0 when the sun is down; its integral over a day is 0.99 to 1.01, so a caller renormalises
 */
export function globalRatio(hourAngleRad: number, sunsetRad: number): number {
  const a = 0.409 + 0.5016 * Math.sin(sunsetRad - sixtyDegRad);
  const b = 0.6609 - 0.4767 * Math.sin(sunsetRad - sixtyDegRad);
  return diffuseRatio(hourAngleRad, sunsetRad) * (a + b * Math.cos(hourAngleRad));
}

/** Ratio of hourly to daily diffuse radiation (Liu & Jordan 1960, Solar Energy 4(3):1-19), per hour; same arguments. */
export function diffuseRatio(hourAngleRad: number, sunsetRad: number): number {
  const height = Math.cos(hourAngleRad) - Math.cos(sunsetRad);
  if (height <= 0) return 0;
  return ((Math.PI / 24) * height) / (Math.sin(sunsetRad) - sunsetRad * Math.cos(sunsetRad));
}

/**
 * Spreads one day's radiation over equal steps. The sum over the steps is the day's total exactly; diffuse never
 * exceeds global in any step.
 *
 * @param hourAnglesRad middle of each step
 * @param stepHours length of a step
 * @param sunsetRad sunset hour angle; 0 (polar night) gives no light
 * @param globalWhM2 the day's global radiation
 * @param diffuseShare the day's diffuse share, 0..1
 */
export function spreadDay(
  hourAnglesRad: Float64Array,
  stepHours: number,
  sunsetRad: number,
  globalWhM2: number,
  diffuseShare: number,
): HorizontalLight {
  const globalWm2 = profile(hourAnglesRad, sunsetRad, globalRatio, globalWhM2 / stepHours);
  const diffuseWm2 = profile(hourAnglesRad, sunsetRad, diffuseRatio, (globalWhM2 * diffuseShare) / stepHours);
  diffuseWm2.forEach((diffuse, step) => {
    diffuseWm2[step] = Math.min(diffuse, globalWm2[step]!);
  });
  return { globalWm2, diffuseWm2 };
}

function profile(
  hourAnglesRad: Float64Array,
  sunsetRad: number,
  ratio: (hourAngleRad: number, sunsetRad: number) => number,
  total: number,
): Float64Array {
  const shape = hourAnglesRad.map((hourAngle) =>
    sunsetRad > 0 ? Math.max(0, ratio(wrapHourAngle(hourAngle), sunsetRad)) : 0,
  );
  const sum = shape.reduce((all, each) => all + each, 0);
  return sum > 0 ? shape.map((each) => (each / sum) * total) : shape;
}

/** The clock's midnight can fall a little before or after the sun's. */
function wrapHourAngle(hourAngleRad: number): number {
  if (hourAngleRad > Math.PI) return hourAngleRad - 2 * Math.PI;
  return hourAngleRad < -Math.PI ? hourAngleRad + 2 * Math.PI : hourAngleRad;
}
