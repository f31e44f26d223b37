import { describe, it } from 'vitest';
import { airDensityKgM3, pressurePa } from '../../src-main/model/ride/air-density.ts';
import { expectNear } from '../support/near.ts';

/** Gas constant of air, J/(kg K): ISO 2533. */
const gasConstantJkgK = 287.053;

describe('the standard atmosphere of ISO 2533:1975', () => {
  /*
   * At geopotential heights. Pressure to 1e-5 (the exponent is printed to six digits), temperature to 0.01 K as printed,
   * density to half of its last digit.
   */
  // prettier-ignore
  const table = [
    { heightM: 0, kelvin: 288.15, pascal: 101_325, kgM3: 1.225 },
    { heightM: 500, kelvin: 284.9, pascal: 95_460.84, kgM3: 1.16727 },
    { heightM: 1000, kelvin: 281.65, pascal: 89_874.56, kgM3: 1.11164 },
    { heightM: 1500, kelvin: 278.4, pascal: 84_555.99, kgM3: 1.05807 },
    { heightM: 2000, kelvin: 275.15, pascal: 79_495.2, kgM3: 1.00649 },
    { heightM: 2500, kelvin: 271.9, pascal: 74_682.52, kgM3: 0.95686 },
    { heightM: 3000, kelvin: 268.65, pascal: 70_108.53, kgM3: 0.90912 },
    { heightM: 4000, kelvin: 262.15, pascal: 61_640.21, kgM3: 0.81913 },
    { heightM: 5000, kelvin: 255.65, pascal: 54_019.89, kgM3: 0.73612 },
  ];
  it.each(table)('has the tabled pressure at $heightM m', ({ heightM, pascal }) => {
    expectNear(pressurePa(heightM), pascal, 1e-5 * pascal, 'pressure, Pa');
  });
  it.each(table)('has the tabled density at $heightM m', ({ heightM, kgM3 }) => {
    expectNear(airDensityKgM3(heightM), kgM3, 6e-6, 'density, kg/m3');
  });
  it.each(table)('has the tabled temperature behind both at $heightM m', ({ heightM, kelvin }) => {
    const behind = pressurePa(heightM) / (gasConstantJkgK * airDensityKgM3(heightM));
    expectNear(behind, kelvin, 0.01, 'temperature, K');
  });
  it.each(table)('follows the closed form at $heightM m', ({ heightM }) => {
    // Santa Cruz Institute for Particle Physics, 1976 Standard Atmosphere: 1.225 (1 - h / 44329)^4.255876; 1e-4 as its height of
    // 44329 m rounds 44331 m away.
    const closed = 1.225 * (1 - heightM / 44_329) ** 4.255876;
    expectNear(airDensityKgM3(heightM), closed, 1e-4, 'density, kg/m3');
  });
  it('has 1.0066 kg/m3 at a geometric height of 2000 m', () => {
    // The table of ISO 2533 by geometric height, which is 0.6 m more there than the geopotential one we take: 2e-4.
    expectNear(airDensityKgM3(2000), 1.0066, 2e-4, 'density, kg/m3');
  });
});

describe('air of another temperature at 101325 Pa', () => {
  // Ideal gas with the constants of ISO 2533, printed to 1e-4.
  it.each([
    { airDegC: 0, kgM3: 1.2923 },
    { airDegC: 20, kgM3: 1.2041 },
    { airDegC: 30, kgM3: 1.1644 },
  ])('weighs $kgM3 kg/m3 at $airDegC degC', ({ airDegC, kgM3 }) => {
    expectNear(airDensityKgM3(0, airDegC), kgM3, 1e-4, 'density, kg/m3');
  });
});
