import { radPerDeg } from '../angle.ts';
import { airDegC } from './air-temperature.ts';
import { dayOfYear, monthOf } from './calendar.ts';
import {
  extraterrestrialMJm2,
  extraterrestrialNormalWm2,
  sunsetHourAngleRad,
  whPerMJ,
} from './extraterrestrial.ts';
import { planeIrradiance } from './plane-of-array.ts';
import { cosZenithOf, hourAngleRadOf, sunOfDay } from './position.ts';
import { spreadDay } from './within-day.ts';

/** The monthly means of a place; index 0 is January. */
export interface PlaceClimate {
  readonly latDeg: number;
  readonly clearness: readonly number[];
  readonly minDegC: readonly number[];
  readonly maxDegC: readonly number[];
}

/** How a panel lies: flat, or turned to face the sun. */
export type PanelAim = 'flat' | 'aimed';

/** One day of light at a place, by step. */
export interface DayLight {
  /** Global radiation of the day on a horizontal plane, Wh/m2. */
  readonly radiationWhM2: number;
  /** Sunrise to sunset by geometry, hours 0..24. */
  readonly dayLengthH: number;
  /** Light on a panel, W/m2, by aim and step. */
  readonly panelWm2: Readonly<Record<PanelAim, Float64Array>>;
  readonly airDegC: Float64Array;
}

/**
 * Light of one day.
 *
 * @param noonMs noon of the date, UTC
 * @param clearness of this day, global over extraterrestrial, 0..1
 * @param diffuseShareOf the day's diffuse share from its clearness and sunset hour angle
 * @param stepsPerDay equal steps from midnight to midnight of local mean solar time
 */
export function lightOfDay(
  place: PlaceClimate,
  noonMs: number,
  clearness: number,
  diffuseShareOf: (clearness: number, sunsetRad: number) => number,
  stepsPerDay: number,
): DayLight {
  const latRad = place.latDeg * radPerDeg;
  const sun = sunOfDay(noonMs);
  const sunsetRad = sunsetHourAngleRad(latRad, sun.declinationRad);
  const radiationWhM2 = clearness * extraterrestrialMJm2(latRad, dayOfYear(noonMs)) * whPerMJ;
  const stepHours = 24 / stepsPerDay;
  const clockHours = Float64Array.from({ length: stepsPerDay }, (_, step) => (step + 0.5) * stepHours);
  const hourAnglesRad = clockHours.map((hour) => hourAngleRadOf(hour, sun));
  const horizontal = spreadDay(
    hourAnglesRad,
    stepHours,
    sunsetRad,
    radiationWhM2,
    diffuseShareOf(clearness, sunsetRad),
  );
  const normalWm2 = extraterrestrialNormalWm2(dayOfYear(noonMs));
  const onPanel = (aim: PanelAim): Float64Array =>
    hourAnglesRad.map((hourAngle, step) =>
      irradiance(aim, cosZenithOf(hourAngle, sun.declinationRad, latRad), normalWm2, {
        globalWm2: horizontal.globalWm2[step]!,
        diffuseWm2: horizontal.diffuseWm2[step]!,
      }),
    );
  const month = monthOf(noonMs);
  return {
    radiationWhM2,
    dayLengthH: (24 / Math.PI) * sunsetRad,
    panelWm2: { flat: onPanel('flat'), aimed: onPanel('aimed') },
    airDegC: clockHours.map((hour) => airDegC(hour, place.minDegC[month]!, place.maxDegC[month]!)),
  };
}

/** Sun this low gives no beam worth counting, and its cosine no longer divides safely: about 0.1 degrees. */
const leastCosZenith = 0.002;

function irradiance(
  aim: PanelAim,
  cosZenith: number,
  extraterrestrialWm2: number,
  horizontal: { readonly globalWm2: number; readonly diffuseWm2: number },
): number {
  const beamHorizontal = horizontal.globalWm2 - horizontal.diffuseWm2;
  const beamNormalWm2 =
    cosZenith > leastCosZenith ? Math.min(extraterrestrialWm2, beamHorizontal / cosZenith) : 0;
  const light = {
    globalWm2: horizontal.globalWm2,
    // Beam beyond what the sun gives outside the atmosphere can't be: at the horizon it counts as light of the sky.
    diffuseWm2: Math.max(0, horizontal.globalWm2 - beamNormalWm2 * Math.max(0, cosZenith)),
    beamNormalWm2,
    extraterrestrialNormalWm2: extraterrestrialWm2,
    cosZenith,
  };
  const plane =
    aim === 'aimed'
      ? { cosTilt: Math.max(0, cosZenith), cosIncidence: 1 }
      : { cosTilt: 1, cosIncidence: cosZenith };
  // In the polar day's low sun the day's profile and the sun's height part ways; no plane gets more than there is.
  return Math.min(extraterrestrialWm2, planeIrradiance(light, plane));
}
