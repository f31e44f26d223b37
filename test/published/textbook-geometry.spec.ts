import { describe, it } from 'vitest';
import { radPerDeg } from '../../src-main/model/angle.ts';
import { daylightHours, sunsetHourAngleRad } from '../../src-main/model/sun/extraterrestrial.ts';
import { cosIncidence } from '../../src-main/model/sun/plane.ts';
import { hourAngleRadOf, positionFromHourAngle, sunOfDay } from '../../src-main/model/sun/position.ts';
import { expectNear } from '../support/near.ts';
import { cooperSun } from './cooper-day.ts';

/*
 * Duffie & Beckman, Solar Engineering of Thermal Processes, 4th ed., chapter 1: solar time, azimuth from south (west positive),
 * Cooper's declination. Tolerances: 0.1 degrees for angles printed to 0.1 degrees, half a degree for whole ones, 0.005 for
 * cosines and ratios printed to two or three digits.
 */
const hourAngleRad = (solarHour: number): number => (solarHour - 12) * 15 * radPerDeg;
const fromNorth = (azimuthFromSouthDeg: number): number => azimuthFromSouthDeg + 180;
const sunAt = (solarHour: number, declinationRad: number, latDeg: number) =>
  positionFromHourAngle(hourAngleRad(solarHour), declinationRad, latDeg * radPerDeg);

describe('solar time in example 1.5.1 of Duffie & Beckman', () => {
  // Madison, 89.4 W, clock of 90 W, 3 February, 10:30 standard time.
  it('has the equation of time of 3 February', () =>
    // The book's day-number formula lies up to 0.87 min from an ephemeris.
    expectNear(sunOfDay(Date.UTC(2023, 1, 3, 18)).equationOfTimeMin, -13.5, 0.87, 'equation of time, min'));
  it('is 10:19 on a clock of half past ten', () => {
    const clock = 10.5 + (90 - 89.4) / 15;
    const angle = hourAngleRadOf(clock, { ...cooperSun(34), equationOfTimeMin: -13.5 });
    expectNear((12 + angle / radPerDeg / 15) * 60, 10 * 60 + 19, 0.5, 'solar time, min');
  });
});

describe('incidence on a slope in the examples of Duffie & Beckman', () => {
  it('is 35 degrees in example 1.6.1, facing west of south', () => {
    const cosine = cosIncidence(sunAt(10.5, cooperSun(44).declinationRad, 43), 45, fromNorth(15));
    expectNear(cosine, 0.817, 0.005, 'cosine of incidence');
    expectNear(Math.acos(cosine) / radPerDeg, 35, 0.5, 'incidence, degrees');
  });
  it.each([
    { name: '1.8.1', lat: 43, day: 44, hour: 10.5, slope: 45, facing: 15, ratio: 1.66 },
    { name: '1.8.2', lat: 40, day: 47, hour: 9.5, slope: 30, facing: 0, ratio: 1.61 },
    { name: '1.8.3', lat: 40, day: 47, hour: 9.5, slope: 50, facing: 0, ratio: 1.79 },
  ])('gives the beam ratio Rb of example $name', ({ lat, day, hour, slope, facing, ratio }) => {
    const sun = sunAt(hour, cooperSun(day).declinationRad, lat);
    const flat = cosIncidence(sun, 0, 0);
    expectNear(cosIncidence(sun, slope, fromNorth(facing)) / flat, ratio, 0.005, 'Rb');
  });
});

describe('the spherical triangle in the examples of Duffie & Beckman', () => {
  // Declinations as the examples print them: -14 (13 February), 23.1 (1 July), -2.4 degrees (16 March).
  it.each([
    { name: '1.6.2a', declination: -14, hour: 9.5, zenith: 66.5, azimuth: -40 },
    { name: '1.6.2b', declination: 23.1, hour: 18.5, zenith: 79.6, azimuth: 112 },
    { name: '1.6.3', declination: -2.4, hour: 16, zenith: 70.3, azimuth: 66.8 },
  ])('gives zenith and azimuth of example $name', ({ declination, hour, zenith, azimuth }) => {
    const sun = sunAt(hour, declination * radPerDeg, 43);
    expectNear(sun.zenithDeg, zenith, 0.1, 'zenith, degrees');
    expectNear(sun.azimuthDeg, fromNorth(azimuth), 0.1, 'azimuth, degrees');
  });
  it('gives the sunset hour angle of example 1.6.3', () => {
    const sunset = sunsetHourAngleRad(43 * radPerDeg, -2.4 * radPerDeg);
    expectNear(sunset / radPerDeg, 87.8, 0.1, 'sunset angle, degrees');
  });
});

/*
 * Kalogirou, Solar Energy Engineering, chapter 2: 40 N, 15 June, 2 h after noon; Masters' textbook, exercises: 1 March and 1 July.
 * Half a unit of the last printed digit for the first, 0.1 degrees for the others.
 */
describe('the spherical triangle in other textbooks', () => {
  it('gives altitude and azimuth of Kalogirou’s June afternoon', () => {
    const sun = sunAt(14, 23.35 * radPerDeg, 40);
    expectNear(90 - sun.zenithDeg, 59.75, 0.01, 'altitude, degrees');
    expectNear(-Math.sin(sun.azimuthDeg * radPerDeg), 0.911, 0.001, 'sine of azimuth');
    expectNear(sun.azimuthDeg, fromNorth(65.7), 0.1, 'azimuth, degrees');
  });
  it('gives the day length of Kalogirou’s June day', () =>
    expectNear(daylightHours(40 * radPerDeg, 23.35 * radPerDeg), 14.83, 0.01, 'day length, h'));
  it.each([
    { name: '1 March', lat: 30, declination: -8.3, hour: 10, altitude: 42.1, azimuth: -41.8 },
    { name: '1 July', lat: 38, declination: 23.1, hour: 17, altitude: 25.4, azimuth: 100.4 },
  ])('gives altitude and azimuth of Masters’ $name', ({ lat, declination, hour, altitude, azimuth }) => {
    const sun = sunAt(hour, declination * radPerDeg, lat);
    expectNear(90 - sun.zenithDeg, altitude, 0.1, 'altitude, degrees');
    expectNear(sun.azimuthDeg, fromNorth(azimuth), 0.1, 'azimuth, degrees');
  });
});
