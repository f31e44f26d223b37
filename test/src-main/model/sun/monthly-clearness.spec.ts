import { describe, expect, it } from 'vitest';
import {
  clearnessFromSunshine,
  clearnessOfRadiation,
  clearnessOfSunshine,
  extraterrestrialOfMonthKWhM2,
} from '../../../../src-main/model/sun/monthly-clearness.ts';
import { expectNear } from '../../../support/near.ts';

const allMonths = (value: number): number[] => new Array<number>(12).fill(value);
const latitudes = [-90, -70, -23, 0, 50, 66.5, 90];

describe('clearnessFromSunshine()', () => {
  it.each([
    { what: 'no sunshine', sunshine: 0, length: 12, clearness: 0.25 },
    { what: 'sunshine all day', sunshine: 12, length: 12, clearness: 0.75 },
    { what: 'more sunshine than day', sunshine: 13, length: 12, clearness: 0.75 },
    { what: 'polar night', sunshine: 0, length: 0, clearness: 0.25 },
  ])('is $clearness for $what', ({ sunshine, length, clearness }) => {
    // Angstrom-Prescott with the coefficients of FAO-56 eq. 35.
    expectNear(clearnessFromSunshine(sunshine, length), clearness, 1e-12, 'clearness');
  });
});

describe('monthly clearness', () => {
  it.each(latitudes)('of sunshine is finite and in range at latitude %d', (lat) => {
    const months = clearnessOfSunshine(allMonths(4), lat);
    expect(months).toHaveLength(12);
    expect(Math.min(...months)).toBeGreaterThanOrEqual(0.25);
    expect(Math.max(...months)).toBeLessThanOrEqual(0.75);
  });

  it.each(latitudes)('of own radiation is finite and at most 1 at latitude %d', (lat) => {
    for (const figure of [0, 3, 13.5]) {
      const months = clearnessOfRadiation(allMonths(figure), lat);
      expect(months.every((clearness) => clearness >= 0 && clearness <= 1)).toBe(true);
    }
  });

  it('of own radiation is radiation over what reaches the top of the air', () => {
    const july = 6;
    const [, , , , , , clearness] = clearnessOfRadiation(allMonths(5), 45);
    expectNear(clearness!, 5 / extraterrestrialOfMonthKWhM2(45, july), 1e-12, 'clearness');
  });

  it('of sunshine and of the radiation it stands for agree', () => {
    const sunshine = allMonths(6);
    const clearness = clearnessOfSunshine(sunshine, 40);
    const radiation = clearness.map((k, month) => k * extraterrestrialOfMonthKWhM2(40, month));
    clearnessOfRadiation(radiation, 40).forEach((k, month) =>
      expectNear(k, clearness[month]!, 1e-9, `clearness of month ${month + 1}`),
    );
  });
});

describe('extraterrestrialOfMonthKWhM2()', () => {
  it('is nothing in polar night and most in the polar summer', () => {
    expect(extraterrestrialOfMonthKWhM2(90, 11)).toBe(0);
    expect(extraterrestrialOfMonthKWhM2(-90, 11)).toBeGreaterThan(12);
  });

  it('is near the FAO-56 table of the middle of the month', () => {
    // FAO-56 annex 2 table 2.6, 40 N, June: 41.9 MJ/m2. The month's mean of a curve near its top is a little lower.
    expectNear(extraterrestrialOfMonthKWhM2(40, 5) * 3.6, 41.9, 0.3, 'MJ/m2 a day');
  });
});
