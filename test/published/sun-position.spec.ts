import { describe, expect, it } from 'vitest';
import { radPerDeg } from '../../src-main/model/angle.ts';
import { cosIncidence } from '../../src-main/model/sun/plane.ts';
import { msPerDay } from '../../src-main/model/sun/calendar.ts';
import {
  cosZenithOf,
  hourAngleRadOf,
  positionFromHourAngle,
  sunOfDay,
  type SunPosition,
} from '../../src-main/model/sun/position.ts';
import { expectNear } from '../support/near.ts';

/** Where our chain puts the sun at an instant: local mean solar time, hour angle, triangle of pole, zenith and sun. */
function positionAt(instantMs: number, latDeg: number, lonDeg: number): SunPosition {
  const day = sunOfDay(instantMs);
  const utHours = ((instantMs % msPerDay) / msPerDay) * 24;
  const hourAngleRad = hourAngleRadOf(utHours + lonDeg / 15, day);
  return positionFromHourAngle(hourAngleRad, day.declinationRad, latDeg * radPerDeg);
}

const golden = { lat: 39.742476, lon: -105.1786 } as const;

/** Clock of local mean solar time from a zone's clock, hours. */
const meanSolarHour = (clockHour: number, zoneH: number, lonDeg: number): number =>
  clockHour - zoneH + lonDeg / 15;

/*
 * Reda & Andreas, Solar Position Algorithm for Solar Radiation Applications, NREL/TP-560-34302 (rev. Jan 2008), appendix:
 * 2003-10-17 12:30:30 UTC-7, 39.742476 N, 105.1786 W. The report's instant includes 1830 m of height and a fixed delta T
 * of 67 s; our position is geometric at sea level, so 0.01 degrees are allowed.
 */
describe('the worked example of the NREL solar position algorithm', () => {
  const instant = Date.UTC(2003, 9, 17, 19, 30, 30);
  const position = positionAt(instant, golden.lat, golden.lon);
  const day = sunOfDay(instant);

  it('gives the true zenith as the report prints', () =>
    expectNear(position.zenithDeg, 50.127954, 0.01, 'zenith, degrees'));
  it('gives the azimuth counted clockwise from north', () =>
    expectNear(position.azimuthDeg, 194.340241, 0.01, 'azimuth, degrees'));
  it('gives the declination within the parallax of Earth', () =>
    expectNear(day.declinationRad / radPerDeg, -9.31434, 0.01, 'declination, degrees'));
  it('gives the equation of time to a second', () =>
    expectNear(day.equationOfTimeMin, 14.64151, 0.02, 'equation of time, min'));
  it('gives the local hour angle of that clock', () => {
    const clock = meanSolarHour(12 + 30.5 / 60, -7, golden.lon);
    expectNear(hourAngleRadOf(clock, day) / radPerDeg, 11.1059, 0.01, 'hour angle, degrees');
  });
  it('gives the distance within the radius of Earth', () =>
    // Seen from the ground and not from the centre: at most 4.3e-5 AU off.
    expectNear(1 / Math.sqrt(day.distanceFactor), 0.9965422974, 5e-5, 'distance, AU'));
});

describe('incidence on the slope of the NREL example', () => {
  // Slope 30 degrees, rotated 10 degrees east of south; read in a public copy of the report's inputs.
  const incidenceDeg = (zenithDeg: number, azimuthDeg: number): number =>
    Math.acos(cosIncidence({ zenithDeg, azimuthDeg }, 30, 170)) / radPerDeg;

  it('follows from the printed zenith and azimuth exactly', () =>
    expectNear(incidenceDeg(50.111622, 194.340241), 25.187, 1e-5, 'incidence, degrees'));
  it('follows from our position without its refraction', () => {
    // The report's zenith is refracted by 0.0163 degrees, ours is not; hence 0.02.
    const { zenithDeg, azimuthDeg } = positionAt(Date.UTC(2003, 9, 17, 19, 30, 30), golden.lat, golden.lon);
    expectNear(incidenceDeg(zenithDeg, azimuthDeg), 25.187, 0.02, 'incidence, degrees');
  });
});

describe('the sun over Golden one day later', () => {
  // Tests of pvlib-python, tests/test_solarposition.py: elevation without refraction, azimuth; 0.01 degrees as above.
  const position = positionAt(Date.UTC(2003, 9, 18, 19, 30, 30), golden.lat, golden.lon);
  it('stands at the elevation of the second instant', () =>
    expectNear(90 - position.zenithDeg, 39.505196, 0.01, 'elevation, degrees'));
  it('stands at the azimuth of the second instant', () =>
    expectNear(position.azimuthDeg, 194.311132, 0.01, 'azimuth, degrees'));
});

describe('the sun at 1992-10-13 0 h TD', () => {
  // Meeus, Astronomical Algorithms, 2nd ed. (1998), examples 25.a and 28.a. TD ran 59 s ahead of UT.
  const day = sunOfDay(Date.UTC(1992, 9, 12, 23, 59, 1));
  it('has the declination of example 25.a of Meeus', () =>
    // Parallax: at most 0.0024 degrees.
    expectNear(day.declinationRad / radPerDeg, -7.78507, 0.005, 'declination, degrees'));
  it('has the distance of example 25.a of Meeus', () =>
    // The low-accuracy series gives five digits; the radius of Earth adds 4.3e-5 AU.
    expectNear(1 / Math.sqrt(day.distanceFactor), 0.99766, 1e-4, 'distance, AU'));
  it('has the equation of time of example 28.a', () =>
    expectNear(day.equationOfTimeMin, 13.71, 0.02, 'equation of time, min'));
});

describe('other instants in the tests of pvlib-python', () => {
  // tests/test_solarposition.py, solar position algorithm.
  it.each([
    { name: '2 January 2015', instant: Date.UTC(2015, 0, 2, 7), distance: 0.983289 },
    { name: '2 August 2015', instant: Date.UTC(2015, 7, 2, 7), distance: 1.014861 },
  ])('has the distance of the sun on $name', ({ instant, distance }) =>
    expectNear(1 / Math.sqrt(sunOfDay(instant).distanceFactor), distance, 5e-5, 'distance, AU'),
  );

  it('has the azimuth of a sun below the horizon', () =>
    expectNear(positionAt(Date.UTC(2019, 0, 1), 40, -80).azimuthDeg, 257.26969, 0.02, 'azimuth, degrees'));

  it.each([
    { clock: 7 + 21 / 60 + 55.2132 / 3600, equationOfTimeMin: -3.935172, hourAngle: -70.682338 },
    { clock: 12 + 4 / 60 + 44.634 / 3600, equationOfTimeMin: -4.026295, hourAngle: 0.000801 },
    { clock: 16 + 47 / 60 + 42.9828 / 3600, equationOfTimeMin: -4.117227, hourAngle: 70.721188 },
  ])('turns a clock into the hour angle $hourAngle', ({ clock, equationOfTimeMin, hourAngle }) => {
    const day = { ...sunOfDay(Date.UTC(2015, 0, 2, 19)), equationOfTimeMin };
    const got = hourAngleRadOf(meanSolarHour(clock, -7, golden.lon), day) / radPerDeg;
    expectNear(got, hourAngle, 1e-4, 'hour angle, degrees');
  });
});

describe('closed forms of the sun in the sky', () => {
  it.each([-66, -23, 0, 40, 89])('stands at latitude less declination at noon, %d degrees', (lat) => {
    const zenith = Math.acos(cosZenithOf(0, 10 * radPerDeg, lat * radPerDeg)) / radPerDeg;
    expectNear(zenith, Math.abs(lat - 10), 1e-6, 'noon zenith, degrees');
  });
  it.each([-90, 90])('gives numbers at the very pole, latitude %d', (lat) => {
    const { zenithDeg, azimuthDeg } = positionAt(Date.UTC(2024, 5, 21, 12), lat, 0);
    expect(Number.isFinite(zenithDeg) && Number.isFinite(azimuthDeg)).toBe(true);
  });
});
