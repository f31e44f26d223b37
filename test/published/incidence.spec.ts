import { describe, it } from 'vitest';
import { radPerDeg } from '../../src-main/model/angle.ts';
import {
  cosZenithHours,
  daylightHours,
  sunsetHourAngleRad,
} from '../../src-main/model/sun/extraterrestrial.ts';
import { cosIncidence, meanOverHeadings, planeCourse } from '../../src-main/model/sun/plane.ts';
import { positionFromHourAngle } from '../../src-main/model/sun/position.ts';
import { sunCourse } from '../../src-main/model/sun/sun-course.ts';
import { expectNear } from '../support/near.ts';
import { hourOfSkyWm2, hourOnPlaneWm2 } from './one-hour.ts';

const exact = 1e-9;
const cosOf = (degrees: number): number => Math.cos(degrees * radPerDeg);

describe('the cosine of incidence on a plane', () => {
  // Tests of pvlib-python, tests/test_irradiance.py; the last one is printed to seven digits.
  it.each([
    { tilt: 0, facing: 0, zenith: 0, azimuth: 0, expected: 1 },
    { tilt: 30, facing: 180, zenith: 30, azimuth: 180, expected: 1 },
    { tilt: 30, facing: 180, zenith: 150, azimuth: 0, expected: -1 },
    { tilt: 90, facing: 0, zenith: 30, azimuth: 60, expected: 0.25 },
    { tilt: 90, facing: 0, zenith: 30, azimuth: 170, expected: -0.4924039 },
  ])('is $expected at tilt $tilt and zenith $zenith', ({ tilt, facing, zenith, azimuth, expected }) =>
    expectNear(
      cosIncidence({ zenithDeg: zenith, azimuthDeg: azimuth }, tilt, facing),
      expected,
      Number.isInteger(expected * 4) ? exact : 5e-8,
      'cosine of incidence',
    ),
  );

  it.each([0, 90, 217])('is that of the zenith lying flat, turned to %d', (facing) =>
    expectNear(
      cosIncidence({ zenithDeg: 63, azimuthDeg: 140 }, 0, facing),
      cosOf(63),
      exact,
      'cosine of incidence',
    ),
  );
  it('is 1 on a plane that faces the sun', () =>
    expectNear(cosIncidence({ zenithDeg: 63, azimuthDeg: 140 }, 63, 140), 1, exact, 'cosine of incidence'));
  it('is the sine of the zenith on a wall', () =>
    expectNear(
      cosIncidence({ zenithDeg: 63, azimuthDeg: 140 }, 90, 140),
      Math.sin(63 * radPerDeg),
      exact,
      'cosine of incidence',
    ));
});

describe('a plane aimed at the sun over one lying flat', () => {
  // 1/cos z, beam alone; printed to six decimals.
  it.each([
    { zenith: 0, gain: 1 },
    { zenith: 30, gain: 1.154701 },
    { zenith: 45, gain: 1.414214 },
    { zenith: 60, gain: 2 },
    { zenith: 70, gain: 2.923804 },
    { zenith: 75, gain: 3.863703 },
    { zenith: 80, gain: 5.75877 },
  ])('gains $gain of beam light at zenith $zenith', ({ zenith, gain }) => {
    const cosZenith = cosOf(zenith);
    const light = {
      globalWm2: 800 * cosZenith,
      diffuseWm2: 0,
      beamNormalWm2: 800,
      normalWm2: 1367,
      cosZenith,
    };
    const optics = { diffuse: 'hay-davies', groundReflectance: 0 } as const;
    const aimed = hourOnPlaneWm2(light, { cosTilt: cosZenith, cosIncidence: 1 }, optics);
    const flat = hourOnPlaneWm2(light, { cosTilt: 1, cosIncidence: cosZenith }, optics);
    expectNear(aimed / flat, gain, 1e-6, 'gain');
  });

  it('is laid so all day long by its course', () => {
    const course = sunCourse(50, 0, Date.UTC(2024, 5, 21, 12), 96);
    const aimed = planeCourse(course, { as: 'aimed' });
    const flat = planeCourse(course, { as: 'flat' });
    for (let step = course.lightFrom; step < course.lightTo; step += 1) {
      const gain = aimed.cosIncidence[step]! / flat.cosIncidence[step]!;
      expectNear(gain * aimed.cosTilt[step]!, 1, exact, `gain times cos z in step ${step}`);
    }
  });
});

describe('the part of an even sky that a tilted plane sees', () => {
  // (1 + cos b)/2, printed to six decimals.
  it.each([
    { tilt: 0, part: 1 },
    { tilt: 15, part: 0.982963 },
    { tilt: 30, part: 0.933013 },
    { tilt: 45, part: 0.853553 },
    { tilt: 60, part: 0.75 },
    { tilt: 90, part: 0.5 },
  ])('is $part of it at a tilt of $tilt', ({ tilt, part }) => {
    const even = { globalWm2: 1, diffuseWm2: 1, beamNormalWm2: 0, normalWm2: 1367, cosZenith: 0.5 };
    const plane = { cosTilt: cosOf(tilt), cosIncidence: 0.5 };
    expectNear(hourOfSkyWm2(even, plane, 'isotropic'), part, 1e-6, 'isotropic');
    // With no beam there is nothing round the sun either.
    expectNear(hourOfSkyWm2(even, plane, 'hay-davies'), part, 1e-6, 'Hay-Davies');
  });
});

describe('a day without atmosphere, aimed over flat', () => {
  // Closed form ws/(cos phi cos d sin ws + ws sin phi sin d), printed to four decimals; day lengths to three.
  it.each([
    { lat: 0, declination: 23.45, ratio: 1.7122 },
    { lat: 0, declination: 0, ratio: 1.5708 },
    { lat: 0, declination: -23.45, ratio: 1.7122 },
    { lat: 40, declination: 23.45, ratio: 1.6874, hours: 14.846 },
    { lat: 40, declination: 0, ratio: 2.0505 },
    { lat: 40, declination: -23.45, ratio: 3.4427, hours: 9.154 },
    { lat: 50, declination: 23.45, ratio: 1.8395, hours: 16.15 },
    { lat: 50, declination: 0, ratio: 2.4437 },
    { lat: 50, declination: -23.45, ratio: 5.364, hours: 7.85 },
    { lat: 60, declination: 23.45, ratio: 2.1291, hours: 18.494 },
    { lat: 60, declination: 0, ratio: 3.1416 },
    { lat: 60, declination: -23.45, ratio: 13.2668, hours: 5.506 },
  ])('gains $ratio at latitude $lat and declination $declination', ({ lat, declination, ratio, hours }) => {
    const [latRad, declinationRad] = [lat * radPerDeg, declination * radPerDeg];
    const daylight = daylightHours(latRad, declinationRad);
    expectNear(daylight / cosZenithHours(latRad, declinationRad), ratio, 1e-4, 'ratio of the day');
    if (hours !== undefined) expectNear(daylight, hours, 5e-4, 'day length, h');
  });

  it.each([-89, -40, 0, 66])('has sunset at 90 degrees on the equinox, latitude %d', (lat) =>
    expectNear(sunsetHourAngleRad(lat * radPerDeg, 0), Math.PI / 2, exact, 'sunset hour angle, rad'),
  );
  it.each([-23.45, 11])('has sunset at 90 degrees on the equator, declination %d', (declination) =>
    expectNear(sunsetHourAngleRad(0, declination * radPerDeg), Math.PI / 2, exact, 'sunset hour angle, rad'),
  );

  it.each([
    { lat: 52, facing: 180 },
    { lat: -35, facing: 0 },
  ])('gives a slope at latitude $lat 2/pi of aimed', ({ lat, facing }) => {
    const minutes = Array.from({ length: 720 }, (_, minute) => ((minute + 0.5) / 4 - 90) * radPerDeg);
    const onSlope = minutes.map((hourAngle) =>
      cosIncidence(positionFromHourAngle(hourAngle, 0, lat * radPerDeg), Math.abs(lat), facing),
    );
    const share = onSlope.reduce((sum, cosine) => sum + Math.max(0, cosine), 0) / minutes.length;
    // A sum in minutes is 1e-6 off the integral, the printed value 5e-7.
    expectNear(share, 0.63662, 3e-6, 'share of the aimed plane');
  });
});

describe('a tilted plane on a road that turns', () => {
  // Our own identity: the closed form against the mean over 3600 headings, whose kinks leave less than 1e-6.
  it.each([
    { zenith: 20, tilt: 30 },
    { zenith: 65, tilt: 30 },
    { zenith: 88, tilt: 60 },
    { zenith: 50, tilt: 90 },
    { zenith: 50, tilt: 0 },
    { zenith: 0, tilt: 45 },
  ])('takes the mean of all headings, zenith $zenith, tilt $tilt', ({ zenith, tilt }) => {
    const headings = Array.from({ length: 3600 }, (_, heading) => heading / 10);
    const sum = headings.reduce(
      (all, heading) =>
        all + Math.max(0, cosIncidence({ zenithDeg: zenith, azimuthDeg: 123 }, tilt, heading)),
      0,
    );
    expectNear(meanOverHeadings(cosOf(zenith), tilt), sum / headings.length, 1e-6, 'mean cosine');
  });
});
