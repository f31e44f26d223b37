import { lapseKPerM } from '../lapse-rate.ts';

/** Clock hour of the warmest air (common practice, no source). */
const warmestHour = 15;

/** Air temperature through a mean day, degC: a cosine between minimum and maximum, warmest at 15 h. */
export function airDegC(clockHour: number, minDegC: number, maxDegC: number): number {
  const mean = (minDegC + maxDegC) / 2;
  const swing = (maxDegC - minDegC) / 2;
  return mean + swing * Math.cos(((clockHour - warmestHour) / 24) * 2 * Math.PI);
}

/** A station's temperature moved to another height, degC. */
export function atHeight(degC: number, fromM: number, toM: number): number {
  return degC - (toM - fromM) * lapseKPerM;
}
