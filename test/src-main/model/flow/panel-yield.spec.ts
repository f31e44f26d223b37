import { describe, expect, it } from 'vitest';
import {
  aimedOverFlat,
  dailyYields,
  spreadOfDay,
  summarise,
} from '../../../../src-main/model/flow/panel-yield.ts';
import { panelHistories } from '../../../../src-main/model/flow/histories/panel-histories.ts';
import { expectNear } from '../../../support/near.ts';
import { climateAt, laidOn, panel20, skiesOf, sunAt, usualOptics } from '../../../support/sun-fixture.ts';

describe('dailyYields()', () => {
  const sun = sunAt(climateAt(45, 0.5), '2027-05-03', 9);
  const skies = skiesOf(sun, 40);
  const bright = { ...panel20, startWm2: 0 };
  const small = { ...bright, ratedW: 6, outputW: 5 };
  const laid = laidOn(sun, [bright, small]);

  it('adds up to the mean power that the comparison takes', () => {
    const yields = dailyYields(laid, sun, skies);
    const mean = yields.flatMap((each) => [...each]).reduce((sum, wh) => sum + wh, 0) / 40;
    const { meanW } = panelHistories(laid, sun, skies, 48);
    const watts = meanW.reduce((sum, each) => sum + each, 0);
    // Histories are kept in single precision.
    expectNear(mean, watts / 2, 1e-6 * mean, 'Wh over all days');
  });

  it('keeps the panels apart', () => {
    const [big, little] = dailyYields(laid, sun, skies);
    big!.forEach((wh, at) => expect(wh).toBeGreaterThan(little![at]!));
  });

  it('differs from day to day and from history to history', () => {
    expect(new Set(dailyYields(laid, sun, skies)[0]).size).toBe(9 * 40);
  });
});

describe('spreadOfDay()', () => {
  it('takes one day of every history', () => {
    // Two days, five histories: the second day is 10 times the first.
    const values = Float64Array.from([1, 2, 3, 4, 5].flatMap((value) => [value, 10 * value]));
    expect(spreadOfDay(values, 2, 0).mean).toBe(3);
    expect(spreadOfDay(values, 2, 1)).toEqual({ mean: 30, band: { p10: 14, p90: 46 } });
  });
});

describe('summarise()', () => {
  it('looks at the days of the leg alone, and at weeks of all days', () => {
    const oneHistory = Float64Array.of(10, 20, 30, 100, 100, 100, 100, 100);
    const { goodDayWh, usualDayWh, dullDayWh, dullWeekWh } = summarise(oneHistory, 8, 3);
    expect([dullDayWh, usualDayWh, goodDayWh]).toEqual([12, 20, 28]);
    // Weeks of 460 and 550 Wh: a tenth of the way from the duller to the brighter.
    expectNear(dullWeekWh, (460 + 9) / 7, 1e-9, 'Wh a day');
  });

  it('finds a dull week brighter than a dull day', () => {
    const sun = sunAt(climateAt(50, 0.4), '2027-04-01', 21);
    const skies = skiesOf(sun, 100);
    const { dullDayWh, dullWeekWh, usualDayWh } = summarise(
      dailyYields(laidOn(sun, [panel20]), sun, skies)[0]!,
      21,
      21,
    );
    expect(dullWeekWh).toBeGreaterThan(dullDayWh);
    expect(dullWeekWh).toBeLessThan(usualDayWh);
  });
});

describe('aimedOverFlat()', () => {
  const ratio = (lat: number, date: string, clearness = 0.55): number | null => {
    const sun = sunAt(climateAt(lat, clearness), date, 5);
    return aimedOverFlat(sun, skiesOf(sun), { from: 0, to: 5 }, usualOptics);
  };

  it('is null where the sun stays down', () => {
    expect(ratio(80, '2027-12-20')).toBeNull();
  });

  it('is over two under a low sun and far below in summer', () => {
    expect(ratio(60, '2027-01-10')!).toBeGreaterThan(2);
    expect(ratio(30, '2027-06-20')!).toBeLessThan(1.5);
  });

  it('is smaller the duller the sky', () => {
    expect(ratio(50, '2027-11-10', 0.3)!).toBeLessThan(ratio(50, '2027-11-10', 0.6)!);
  });
});
