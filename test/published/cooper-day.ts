import type { SunDistance } from '../../src-main/model/sun/extraterrestrial.ts';
import { radPerDeg } from '../../src-main/model/angle.ts';

/**
 * The sun that Duffie & Beckman reckon with, by day number: Cooper 1969 (Solar Energy 12:333-346) for the declination, the simple
 * cosine for the distance.
 */
export function cooperSun(dayNumber: number): SunDistance {
  return {
    declinationRad: 23.45 * radPerDeg * Math.sin((2 * Math.PI * (284 + dayNumber)) / 365),
    distanceFactor: 1 + 0.033 * Math.cos((2 * Math.PI * dayNumber) / 365),
  };
}
