import { describe, expect, it } from 'vitest';
import { meanRadiationWhM2, tourSun } from '../../../../src-main/model/flow/tour-sun.ts';
import { noonOf } from '../../../../src-main/model/sun/calendar.ts';
import { expectNear } from '../../../support/near.ts';
import { climateAt, skiesOf, sunAt } from '../../../support/sun-fixture.ts';

describe('tourSun()', () => {
  it('takes each day its own month and place', () => {
    const rising = {
      ...climateAt(40),
      clearness: Array.from({ length: 12 }, (_, month) => 0.2 + month * 0.04),
    };
    const { expected, courses } = tourSun(
      [
        { climate: rising, noonMs: noonOf('2027-12-31') },
        { climate: rising, noonMs: noonOf('2027-12-31', 1) },
        { climate: { ...rising, latDeg: -40 }, noonMs: noonOf('2028-02-29') },
      ],
      24,
    );
    [0.64, 0.2, 0.24].forEach((mean, day) => expectNear(expected[day]!.mean, mean, 1e-12, 'mean clearness'));
    expect(courses[2]!.extraterrestrialWhM2).toBeGreaterThan(2 * courses[1]!.extraterrestrialWhM2);
  });

  it('has the air of every step between the month’s minimum and maximum', () => {
    const { airDegC } = sunAt(climateAt(40), '2027-05-01', 3, 24);
    expect(airDegC).toHaveLength(72);
    expect(Math.min(...airDegC)).toBeGreaterThanOrEqual(8);
    expect(Math.max(...airDegC)).toBeLessThanOrEqual(20);
    expect(airDegC[15]!).toBeGreaterThan(airDegC[3]!);
  });

  it.each([-90, 90])('answers for a year at the pole, latitude %d', (lat) => {
    const sun = sunAt(climateAt(lat), '2027-12-01', 366, 24);
    sun.courses.forEach((_, day) => expect(Number.isFinite(meanRadiationWhM2(sun, day))).toBe(true));
  });
});

describe('meanRadiationWhM2()', () => {
  it('is what the drawn days average to', () => {
    const sun = sunAt(climateAt(62, 0.55), '2027-12-10', 1);
    const { clearness } = skiesOf(sun, 4000);
    const drawn = clearness.reduce((sum, each) => sum + each, 0) / clearness.length;
    const top = sun.courses[0]!.extraterrestrialWhM2;
    expectNear(meanRadiationWhM2(sun, 0), drawn * top, 0.01 * drawn * top, 'Wh/m2');
  });
});
