import { describe, it } from 'vitest';
import { radPerDeg } from '../../src-main/model/angle.ts';
import { dailyDiffuseShare } from '../../src-main/model/sun/daily-diffuse.ts';
import { extraterrestrialMJm2 } from '../../src-main/model/sun/extraterrestrial.ts';
import { expectNear } from '../support/near.ts';
import { cooperSun } from './cooper-day.ts';

/*
 * Erbs, Klein & Duffie 1982, Solar Energy 28(4):293-302: daily diffuse share, values of the published polynomials (three
 * copies agree), to 5e-4. Winter is a sunset angle of at most 81.4 degrees.
 */
const rows = [
  { clearness: 0.1, winter: 0.9862, other: 1 },
  { clearness: 0.2, winter: 0.9628, other: 0.9612 },
  { clearness: 0.3, winter: 0.892, other: 0.8778 },
  { clearness: 0.4, winter: 0.7583, other: 0.7584 },
  { clearness: 0.5, winter: 0.5688, other: 0.6083 },
  { clearness: 0.6, winter: 0.3534, other: 0.4323 },
  { clearness: 0.7, winter: 0.1641, other: 0.2357 },
  { clearness: 0.75, winter: 0.143, other: 0.175 },
  { clearness: 0.8, winter: 0.143, other: 0.175 },
];
const [winterRad, seasonRad, otherRad] = [80 * radPerDeg, 81.4 * radPerDeg, 95 * radPerDeg];

describe('daily diffuse share of Erbs, Klein & Duffie', () => {
  it.each(rows)('is as published in winter at clearness $clearness', ({ clearness, winter }) =>
    expectNear(dailyDiffuseShare(clearness, winterRad), winter, 5e-4, 'share'),
  );
  it.each(rows)('is as published in other seasons at clearness $clearness', ({ clearness, other }) =>
    expectNear(dailyDiffuseShare(clearness, otherRad), other, 5e-4, 'share'),
  );
  it('drops at its joint as the paper has it', () => {
    expectNear(dailyDiffuseShare(0.722 - 1e-9, otherRad), 0.1904, 5e-4, 'share below the joint');
    expectNear(dailyDiffuseShare(0.722, otherRad), 0.175, 5e-4, 'share from the joint on');
  });
  it('counts a sunset angle of 81.4 degrees as winter', () => {
    expectNear(dailyDiffuseShare(0.6, seasonRad), 0.3534, 5e-4, 'share at 81.4 degrees');
    expectNear(dailyDiffuseShare(0.6, seasonRad + 1e-9), 0.4323, 5e-4, 'share above 81.4 degrees');
  });
  it('leads through example 2.11.1 of Duffie & Beckman', () => {
    // St Louis, 38.6 N, 3 September, 23.0 MJ/m2 on the ground. The book's diffuse 6.0 MJ/m2 was not read at first hand, so the value
    // of the polynomial at the book's clearness of 0.69 stands beside it.
    const outside = extraterrestrialMJm2(38.6 * radPerDeg, cooperSun(246));
    expectNear(outside, 33.25, 0.05, 'H0, MJ/m2');
    expectNear(23 / outside, 0.69, 0.005, 'clearness');
    expectNear(dailyDiffuseShare(0.69, otherRad), 0.2562, 5e-4, 'share');
    expectNear(dailyDiffuseShare(0.69, otherRad) * 23, 6, 0.15, 'diffuse, MJ/m2');
  });
});
