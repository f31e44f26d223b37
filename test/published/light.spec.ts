import { describe, expect, it } from 'vitest';
import { monthlyDiffuseShare } from '../../src-main/model/sun/daily-radiation.ts';
import { cellDegC, cellPowerW } from '../../src-main/model/sun/panel.ts';
import { groundReflected, planeIrradiance, skyDiffuse } from '../../src-main/model/sun/plane-of-array.ts';
import { diffuseRatio, globalRatio } from '../../src-main/model/sun/within-day.ts';
import { expectNear } from '../support/near.ts';

const rad = Math.PI / 180;

describe('monthly diffuse share of Erbs, Klein & Duffie 1982', () => {
  // Values of the published polynomials, Solar Energy 28(4):293-302, to 5e-4.
  const rows = [
    { clearness: 0.3, winter: 0.6423, other: 0.6637 },
    { clearness: 0.5, winter: 0.3911, other: 0.4291 },
    { clearness: 0.7, winter: 0.2186, other: 0.2502 },
  ];
  it.each(rows)('holds in both seasons at clearness $clearness', ({ clearness, winter, other }) => {
    expectNear(monthlyDiffuseShare(clearness, 80 * rad), winter, 5e-4, 'winter');
    expectNear(monthlyDiffuseShare(clearness, 95 * rad), other, 5e-4, 'other seasons');
  });
  it('agrees with example 2.12.1 of Duffie & Beckman', () =>
    expectNear(monthlyDiffuseShare(0.55, 95 * rad), 0.38, 0.005, 'share'));
});

describe('hourly ratios over the day', () => {
  // Collares-Pereira & Rabl 1979, Solar Energy 22:155-164; Liu & Jordan 1960, Solar Energy 4(3):1-19; tolerance 2e-4.
  const rows = [
    { sunset: 60, hours: 0.5, global: 0.1999, diffuse: 0.1879 },
    { sunset: 90, hours: 0.5, global: 0.14, diffuse: 0.1298 },
    { sunset: 90, hours: 4.5, global: 0.0412, diffuse: 0.0501 },
    { sunset: 120, hours: 6.5, global: 0.0205, diffuse: 0.0253 },
  ];
  it.each(rows)('are as published $hours h from noon at sunset angle $sunset', (row) => {
    const hourAngle = row.hours * 15 * rad;
    expectNear(globalRatio(hourAngle, row.sunset * rad), row.global, 2e-4, 'global');
    expectNear(diffuseRatio(hourAngle, row.sunset * rad), row.diffuse, 2e-4, 'diffuse');
  });
  it('puts 0.076 of a January day at 38 S between 8 and 9 h', () => {
    // Duffie & Beckman, example 2.13.1: declination -20.9 degrees, sunset angle 107.4 degrees.
    expectNear(globalRatio(52.5 * rad, 107.37 * rad), 0.0759, 2e-4, 'ratio');
  });
});

/*
 * One data set for tilted planes, as used by the tests of pvlib-python (tests/test_irradiance.py): tilt 40 degrees facing
 * south, extraterrestrial normal 1321.1656 W/m2, ground 0.40. Tolerance 1e-3 W/m2: inputs are printed to 1e-8.
 */
describe('light on a plane tilted by 40 degrees', () => {
  const tilt = 40 * rad;
  const hours = [
    {
      name: 'late afternoon',
      global: 257.20751138,
      beam: 646.22886049,
      diffuse: 62.03376265,
      zenith: 72.41687122,
      azimuth: 287.04104128,
      onPlane: 33.50143401,
      ground: 12.03502531,
      isotropic: 54.777191,
      hayDavies: 33.190865,
    },
    {
      name: 'near noon',
      global: 1042.48031487,
      beam: 939.95469881,
      diffuse: 118.45831879,
      zenith: 10.56413562,
      azimuth: 144.76567754,
      onPlane: 798.3193928,
      ground: 48.77881252,
      isotropic: 104.601328,
      hayDavies: 102.994862,
    },
  ];
  it.each(hours)('has the published parts $name', (hour) => {
    const zenith = hour.zenith * rad;
    const cosIncidence =
      Math.cos(zenith) * Math.cos(tilt) +
      Math.sin(zenith) * Math.sin(tilt) * Math.cos(hour.azimuth * rad - Math.PI);
    const light = {
      globalWm2: hour.global,
      diffuseWm2: hour.diffuse,
      beamNormalWm2: hour.beam,
      extraterrestrialNormalWm2: 1321.1655834833,
      cosZenith: Math.cos(zenith),
    };
    const plane = { cosTilt: Math.cos(tilt), cosIncidence };
    expectNear(hour.beam * Math.max(0, cosIncidence), hour.onPlane, 1e-3, 'beam');
    expectNear(skyDiffuse(light, plane, 'isotropic'), hour.isotropic, 1e-3, 'isotropic sky');
    expectNear(skyDiffuse(light, plane, 'hay-davies'), hour.hayDavies, 1e-3, 'Hay-Davies sky');
    expectNear(groundReflected(hour.global, plane.cosTilt, 0.4), hour.ground, 1e-3, 'ground');
    expectNear(
      planeIrradiance(light, plane, 'hay-davies', 0.4),
      hour.onPlane + hour.hayDavies + hour.ground,
      2e-3,
      'total',
    );
  });
});

describe('panel temperature and power', () => {
  const panel = {
    ratedW: 100,
    temperatureCoefficientPerK: -0.003,
    noctDegC: 50,
    regulatorEfficiency: 1,
    startWm2: 0,
    outputW: 1000,
  };
  // The Ross form of the NOCT definition; values of pvlib-python tests/test_temperature.py, exact.
  const cells = [
    { light: 1000, air: 30, cell: 67.5 },
    { light: 800, air: 20, cell: 50 },
    { light: 600, air: 40, cell: 62.5 },
  ];
  it.each(cells)('cells reach $cell degC in $light W/m2 and $air degC', ({ light, air, cell }) => {
    expectNear(cellDegC(light, air, 50), cell, 1e-9, 'cell');
  });
  it('power falls with light and heat as the linear model says', () => {
    // pvlib-python tests/test_pvsystem.py: 100 W, 900 W/m2, cells at 30 degC, -0.3 %/K.
    expectNear(cellPowerW(900, 30, panel), 88.65, 1e-9, 'power');
  });
  it('a panel in the dark gives nothing', () => {
    expect(cellPowerW(0, 20, panel)).toBe(0);
  });
});
