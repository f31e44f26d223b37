import { lapseKPerM } from '../lapse-rate.ts';

/** Constants of ISO 2533:1975 (the same in the ICAO and US 1976 atmospheres below 11 km). */
const seaLevelK = 288.15;
const seaLevelPa = 101_325;
const pressureExponent = 5.25588;
const gasConstantJkgK = 287.053;
const zeroDegCInK = 273.15;

/** Pressure of the standard atmosphere, Pa. @param heightM -500..11000 */
export function pressurePa(heightM: number): number {
  return seaLevelPa * ((seaLevelK - lapseKPerM * heightM) / seaLevelK) ** pressureExponent;
}

/**
 * Air density, kg/m3: standard pressure at the height, ideal gas at the air's own temperature.
 *
 * @param airDegC air temperature; left out, the standard atmosphere's at that height
 */
export function airDensityKgM3(heightM: number, airDegC?: number): number {
  const kelvin = airDegC === undefined ? seaLevelK - lapseKPerM * heightM : airDegC + zeroDegCInK;
  return pressurePa(heightM) / (gasConstantJkgK * kelvin);
}
