import { describe, it } from 'vitest';
import { radPerDeg } from '../../src-main/model/angle.ts';
import {
  absoluteAirMass,
  clearBeamWm2,
  clearGlobalWm2,
  pressurePa,
  relativeAirMass,
} from '../../src-main/model/sun/clear-sky.ts';
import { expectNear } from '../support/near.ts';
import { airMasses, cloudlessHours } from './tables/clear-sky.ts';

describe('relative air mass of Kasten & Young', () => {
  it.each(airMasses)('is the formula’s at an elevation of $elevation', ({ elevation, formula }) =>
    // Printed to four decimals.
    expectNear(relativeAirMass(90 - elevation), formula, 1e-4, 'air mass'),
  );
  it.each(airMasses.filter(({ integrated }) => integrated !== undefined))(
    'is near the exact integration at $elevation degrees',
    ({ elevation, integrated }) =>
      // The formula is a fit to the table: up to 0.44 % off.
      expectNear(relativeAirMass(90 - elevation), integrated!, 0.005 * integrated!, 'air mass'),
  );
  it.each([
    { zenith: 0, expected: 1 },
    { zenith: 80, expected: 5.586 },
    { zenith: 89.9, expected: 36.467 },
  ])('is as pvlib-python has it at zenith $zenith', ({ zenith, expected }) =>
    // tests/test_atmosphere.py, printed to three decimals.
    expectNear(relativeAirMass(zenith), expected, 0.001, 'air mass'),
  );
});

describe('air pressure with height', () => {
  // Tests of pvlib-python, tests/test_atmosphere.py, to their 0.001 Pa.
  const heights = [
    { height: -100, pressure: 102_532.073 },
    { height: 1000, pressure: 89_874.75 },
    { height: 8000, pressure: 35_600.496 },
  ];
  it.each(heights)('is as published at $height m of height', ({ height, pressure }) =>
    expectNear(pressurePa(height), pressure, 0.001, 'pressure, Pa'),
  );
  it.each(heights)('scales the air mass at $height m of height', ({ height, pressure }) =>
    // The published equation m p/101325 with the printed air mass at 30 degrees.
    expectNear(absoluteAirMass(60, height), (1.9943 * pressure) / 101_325, 1e-4, 'absolute air mass'),
  );
});

describe('the cloudless sky of Ineichen & Perez', () => {
  // Printed to 1e-6; 1e-4 W/m2 as the tests that hold the values.
  it.each(cloudlessHours)(
    'is as published: zenith $zenithDeg, turbidity $turbidity, $heightM m, $normalWm2 W/m2',
    (hour) => {
      const cosZenith = Math.cos(hour.zenithDeg * radPerDeg);
      const global = clearGlobalWm2(hour, cosZenith, hour.airMass);
      const beam = clearBeamWm2(hour, cosZenith, hour.airMass);
      expectNear(global, hour.global, 1e-4, 'global, W/m2');
      expectNear(beam, hour.beam, 1e-4, 'beam, W/m2');
      expectNear(global - beam * cosZenith, hour.diffuse, 1e-4, 'diffuse, W/m2');
    },
  );
});
