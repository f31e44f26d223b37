import { radPerDeg } from '../angle.ts';

/**
 * Relative optical air mass (Kasten & Young 1989, Applied Optics 28:4735-4738): 1 overhead, 38 at the horizon.
 *
 * @param zenithDeg of the sun as seen, 0..90
 */
export function relativeAirMass(zenithDeg: number): number {
  return 1 / (Math.cos(zenithDeg * radPerDeg) + 0.50572 * (96.07995 - zenithDeg) ** -1.6364);
}

const seaLevelPa = 101_325;

/** Pressure of the standard atmosphere at a height, Pa, below 11 km (ISO 2533:1975). */
export function pressurePa(heightM: number): number {
  return 100 * ((44331.514 - heightM) / 11880.516) ** (1 / 0.1902632);
}

/** Air mass with the pressure of a height counted. */
export function absoluteAirMass(zenithDeg: number, heightM: number): number {
  return (relativeAirMass(zenithDeg) * pressurePa(heightM)) / seaLevelPa;
}

/** A cloudless sky: how high, how turbid, and the sun above it. */
export interface ClearSky {
  /** Above the sea, m. */
  readonly heightM: number;
  /** Linke turbidity: 1 is dry clean air, 3 usual, above 5 hazy. */
  readonly turbidity: number;
  /** Outside the atmosphere, facing the sun, W/m2. */
  readonly normalWm2: number;
}

/**
 * Linke turbidity of the cleanest air: the lowest monthly mean of the world grid whose values the tests of pvlib-python hold
 * (tests/test_clearsky.py: 90 S, 1.30 to 1.45).
 */
export const cleanestTurbidity = 1.3;

const rayleighFall = (heightM: number): number => Math.exp(-heightM / 8000);
const hazeFall = (heightM: number): number => Math.exp(-heightM / 1250);

/**
 * Global radiation of a cloudless sky on a horizontal plane (Ineichen & Perez 2002, Solar Energy 73:151-157), W/m2.
 *
 * @param cosZenith above 0
 * @param airMass absolute
 */
export function clearGlobalWm2(sky: ClearSky, cosZenith: number, airMass: number): number {
  const { heightM, turbidity, normalWm2 } = sky;
  const scale = 5.09e-5 * heightM + 0.868;
  const fall = 3.92e-5 * heightM + 0.0387;
  const haze = rayleighFall(heightM) + hazeFall(heightM) * (turbidity - 1);
  return scale * normalWm2 * cosZenith * Math.exp(-fall * airMass * haze);
}

/** Beam of the same sky on a plane facing the sun, W/m2; never more than the global radiation holds. */
export function clearBeamWm2(sky: ClearSky, cosZenith: number, airMass: number): number {
  const { heightM, turbidity, normalWm2 } = sky;
  const clean = rayleighFall(heightM);
  const beam = normalWm2 * (0.664 + 0.163 / clean) * Math.exp(-0.09 * airMass * (turbidity - 1));
  const held =
    (clearGlobalWm2(sky, cosZenith, airMass) *
      (1 - (0.1 - 0.2 * Math.exp(-turbidity)) / (0.1 + 0.882 / clean))) /
    cosZenith;
  return Math.min(beam, held);
}
