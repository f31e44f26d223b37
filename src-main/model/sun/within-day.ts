import { radPerDeg } from '../angle.ts';

const sixtyDegRad = 60 * radPerDeg;

/**
 * Ratio of hourly to daily diffuse radiation, per hour (Liu & Jordan 1960, Solar Energy 4(3):1-19): as the sun outside the
 * atmosphere. Written with the cosine of the zenith angle, which for days with a sunset is their equation and holds in
 * the polar day too.
 *
 * @param cosZenith at the middle of the hour; 0 or less gives 0
 * @param dayCosZenithH its integral over the day, hours, above 0
 */
export function diffuseRatio(cosZenith: number, dayCosZenithH: number): number {
  return Math.max(0, cosZenith) / dayCosZenithH;
}

/**
 * Ratio of hourly to daily global radiation over the diffuse one (Collares-Pereira & Rabl 1979, Solar Energy 22:155-164).
 *
 * @param hourAngleRad middle of the hour, 0 at noon
 * @param sunsetRad sunset hour angle
 * @returns `globalRatio / diffuseRatio`; the product integrates to 0.99 to 1.01 over a day, so a caller renormalises
 */
export function globalOverDiffuseRatio(hourAngleRad: number, sunsetRad: number): number {
  const a = 0.409 + 0.5016 * Math.sin(sunsetRad - sixtyDegRad);
  const b = 0.6609 - 0.4767 * Math.sin(sunsetRad - sixtyDegRad);
  return Math.max(0, a + b * Math.cos(hourAngleRad));
}

/** Divides a shape by its sum, in place; one with no light stays as it is. */
export function toShares(shape: Float64Array): Float64Array {
  let sum = 0;
  for (let i = 0; i < shape.length; i += 1) sum += shape[i]!;
  if (sum > 0) for (let i = 0; i < shape.length; i += 1) shape[i]! /= sum;
  return shape;
}

/**
 * Spreads a total by shares without passing a bound anywhere; what a step can't take goes to the others by the room they have.
 *
 * @param shares adding up to 1, or all 0
 * @param most bound of each entry
 * @param total at most the sum of the bounds
 * @param out receives the parts, which add up to the total
 */
export function spreadUnder(
  shares: Float64Array,
  most: Float64Array,
  total: number,
  out: Float64Array,
): void {
  let excess = 0;
  let room = 0;
  for (let i = 0; i < shares.length; i += 1) {
    const wanted = shares[i]! * total;
    const bound = most[i]!;
    out[i] = Math.min(wanted, bound);
    if (wanted > bound) excess += wanted - bound;
    else room += bound - wanted;
  }
  if (excess <= 0 || room <= 0) return;
  const filled = Math.min(1, excess / room);
  for (let i = 0; i < shares.length; i += 1) out[i]! += (most[i]! - out[i]!) * filled;
}
