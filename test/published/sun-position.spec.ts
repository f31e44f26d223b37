import { describe, expect, it } from 'vitest';
import {
  cosZenithOf,
  positionFromHourAngle,
  sunOfDay,
  sunPosition,
} from '../../src-main/model/sun/position.ts';
import { expectNear } from '../support/near.ts';

const rad = Math.PI / 180;

/*
 * Reda & Andreas, Solar Position Algorithm for Solar Radiation Applications, NREL/TP-560-34302 (rev. Jan 2008), appendix:
 * 2003-10-17 12:30:30 UTC-7, 39.742476 N, 105.1786 W. The report's elevation includes 1830 m of height and a fixed delta T
 * of 67 s; our position is geometric at sea level, so 0.01 degrees are allowed.
 */
describe('the worked example of the NREL solar position algorithm', () => {
  const instant = Date.UTC(2003, 9, 17, 19, 30, 30);
  const position = sunPosition(instant, 39.742476, -105.1786);

  it('gives the true zenith', () => expectNear(position.zenithDeg, 50.127954, 0.01, 'zenith'));
  it('gives the azimuth from north', () => expectNear(position.azimuthDeg, 194.340241, 0.01, 'azimuth'));
  it('gives the declination', () =>
    expectNear(sunOfDay(instant).declinationRad / rad, -9.31434, 0.01, 'declination'));
  it('gives the equation of time', () =>
    expectNear(sunOfDay(instant).equationOfTimeMin, 14.64151, 0.02, 'equation of time'));
});

describe('the sun at 1992-10-13 0 h TD', () => {
  // Meeus, Astronomical Algorithms, 2nd ed. (1998), examples 25.a and 28.a. TD ran 59 s ahead of UT.
  const instant = Date.UTC(1992, 9, 12, 23, 59, 1);
  it('has the declination of example 25.a', () =>
    expectNear(sunOfDay(instant).declinationRad / rad, -7.78507, 0.005, 'declination'));
  it('has the equation of time of example 28.a', () =>
    expectNear(sunOfDay(instant).equationOfTimeMin, 13.71, 0.02, 'equation of time'));
});

/*
 * Duffie & Beckman, Solar Engineering of Thermal Processes, 4th ed., examples 1.6.1 to 1.6.3: solar time, azimuth from south
 * (west positive), angles printed to 0.1 degrees; declinations as printed there.
 */
describe('the spherical triangle in the examples of Duffie & Beckman', () => {
  const cases = [
    { name: '1.6.2a', declination: -13.95, hour: -37.5, zenith: 66.5, azimuthFromSouth: -40.0 },
    { name: '1.6.2b', declination: 23.1, hour: 97.5, zenith: 79.6, azimuthFromSouth: 112.0 },
    { name: '1.6.3', declination: -2.4, hour: 60, zenith: 70.3, azimuthFromSouth: 66.8 },
  ];
  it.each(cases)('gives zenith and azimuth of example $name', (each) => {
    const { zenithDeg, azimuthDeg } = positionFromHourAngle(
      each.hour * rad,
      each.declination * rad,
      43 * rad,
    );
    expectNear(zenithDeg, each.zenith, 0.15, 'zenith');
    expectNear(azimuthDeg, each.azimuthFromSouth + 180, 0.15, 'azimuth');
  });
});

describe('closed forms of the sun in the sky', () => {
  it.each([-66, -23, 0, 40, 89])('stands at latitude less declination at noon, %d degrees', (lat) => {
    expectNear(Math.acos(cosZenithOf(0, 10 * rad, lat * rad)) / rad, Math.abs(lat - 10), 1e-6, 'noon zenith');
  });
  it.each([-90, 90])('gives numbers at the pole, latitude %d', (lat) => {
    const { zenithDeg, azimuthDeg } = sunPosition(Date.UTC(2024, 5, 21, 12), lat, 0);
    expect(Number.isFinite(zenithDeg) && Number.isFinite(azimuthDeg)).toBe(true);
  });
});
