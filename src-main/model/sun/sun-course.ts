import { radPerDeg } from '../angle.ts';
import {
  absoluteAirMass,
  cleanestTurbidity,
  clearBeamWm2,
  clearGlobalWm2,
  type ClearSky,
} from './clear-sky.ts';
import {
  cosZenithHours,
  extraterrestrialMJm2,
  extraterrestrialNormalWm2,
  sunsetHourAngleRad,
  whPerMJ,
} from './extraterrestrial.ts';
import { cosZenithOf, hourAngleRadOf, sunOfDay } from './position.ts';
import { diffuseRatio, globalOverDiffuseRatio, toShares } from './within-day.ts';

/** The sun over one day at one place: all that the weather does not change. Arrays have one entry a step of the day. */
export interface SunCourse {
  readonly latRad: number;
  readonly declinationRad: number;
  readonly stepHours: number;
  /** Sunset hour angle, rad 0..pi. */
  readonly sunsetRad: number;
  /** Outside the atmosphere: the day on a horizontal plane, Wh/m2, and facing the sun, W/m2. */
  readonly extraterrestrialWhM2: number;
  readonly normalWm2: number;
  readonly hourAngleRad: Float64Array;
  /** 0 while the sun is down. */
  readonly cosZenith: Float64Array;
  /** Share of the day's global and diffuse radiation in each step; adding up to 1, or all 0 in polar night. */
  readonly globalShare: Float64Array;
  readonly diffuseShare: Float64Array;
  /** Most there can be: a cloudless sky of the cleanest air, on a horizontal plane and as beam facing the sun, W/m2. */
  readonly clearGlobalWm2: Float64Array;
  readonly clearBeamWm2: Float64Array;
  /** Clearness of a day that is cloudless throughout; 0 in polar night. */
  readonly clearestClearness: number;
  /** The first step with light and the one after the last. */
  readonly lightFrom: number;
  readonly lightTo: number;
}

/** A sun this low, about 0.1 degrees, gives no light worth counting, and its cosine no longer divides safely. */
const leastCosZenith = 0.002;

/**
 * @param latDeg -90..90
 * @param heightM above the sea
 * @param noonMs noon of the date, UTC
 * @param stepsPerDay equal steps from midnight to midnight of local mean solar time
 */
export function sunCourse(latDeg: number, heightM: number, noonMs: number, stepsPerDay: number): SunCourse {
  const latRad = latDeg * radPerDeg;
  const sun = sunOfDay(noonMs);
  const { declinationRad } = sun;
  const stepHours = 24 / stepsPerDay;
  const sunsetRad = sunsetHourAngleRad(latRad, declinationRad);
  const normalWm2 = extraterrestrialNormalWm2(sun.distanceFactor);
  const hourAngleRad = Float64Array.from({ length: stepsPerDay }, (_, step) =>
    hourAngleRadOf((step + 0.5) * stepHours, sun),
  );
  const cosZenith = hourAngleRad.map((hourAngle) => {
    const cosine = cosZenithOf(hourAngle, declinationRad, latRad);
    return cosine < leastCosZenith ? 0 : cosine;
  });
  const shares = sharesOf(cosZenith, hourAngleRad, sunsetRad, cosZenithHours(latRad, declinationRad));
  const clear = clearCourse({ heightM, turbidity: cleanestTurbidity, normalWm2 }, cosZenith);
  const lightFrom = cosZenith.findIndex((cosine) => cosine > 0);
  // Where no middle of a step sees the sun the day counts as dark, though it may shine for minutes.
  const lit = lightFrom >= 0;
  const extraterrestrialWhM2 = lit ? extraterrestrialMJm2(latRad, sun) * whPerMJ : 0;
  const clearWhM2 = clear.global.reduce((sum, watts) => sum + watts, 0) * stepHours;
  return {
    latRad,
    declinationRad,
    stepHours,
    sunsetRad,
    extraterrestrialWhM2,
    normalWm2,
    hourAngleRad,
    cosZenith,
    ...shares,
    clearGlobalWm2: clear.global,
    clearBeamWm2: clear.beam,
    clearestClearness: lit ? clearWhM2 / extraterrestrialWhM2 : 0,
    lightFrom: lit ? lightFrom : 0,
    lightTo: cosZenith.findLastIndex((cosine) => cosine > 0) + 1,
  };
}

function sharesOf(
  cosZenith: Float64Array,
  hourAngleRad: Float64Array,
  sunsetRad: number,
  dayCosZenithH: number,
): Pick<SunCourse, 'globalShare' | 'diffuseShare'> {
  const diffuse = cosZenith.map((cosine) => (cosine > 0 ? diffuseRatio(cosine, dayCosZenithH) : 0));
  const global = diffuse.map((ratio, step) => ratio * globalOverDiffuseRatio(hourAngleRad[step]!, sunsetRad));
  return { globalShare: toShares(global), diffuseShare: toShares(diffuse) };
}

/** On the highest ground under a low sun the equations pass what the sun sends by a trace; they are held there. */
function clearCourse(
  sky: ClearSky,
  cosZenith: Float64Array,
): { readonly global: Float64Array; readonly beam: Float64Array } {
  const global = new Float64Array(cosZenith.length);
  const beam = new Float64Array(cosZenith.length);
  cosZenith.forEach((cosine, step) => {
    if (cosine === 0) return;
    const airMass = absoluteAirMass(Math.acos(cosine) / radPerDeg, sky.heightM);
    global[step] = Math.min(sky.normalWm2 * cosine, clearGlobalWm2(sky, cosine, airMass));
    beam[step] = Math.min(global[step] / cosine, clearBeamWm2(sky, cosine, airMass));
  });
  return { global, beam };
}
