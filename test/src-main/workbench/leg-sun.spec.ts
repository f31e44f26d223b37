import { describe, expect, it } from 'vitest';
import type { LegSun, Lying, SunBy } from '../../../shared-types/leg-sun.ts';
import { usualPlacement, usualRules, type Scenario } from '../../../shared-types/scenario.ts';
import { usualSky, type SkySettings } from '../../../shared-types/settings.ts';
import type { Leg } from '../../../shared-types/tour.ts';
import { demoItems, demoSettings } from '../../../db/demo/demo.ts';
import { legSun } from '../../../src-main/workbench/leg-sun.ts';
import { expectNear } from '../../support/near.ts';
import { coordinates, legFixture, stationFixture, tourFixture } from '../../support/station-fixture.ts';

const scenario: Scenario = {
  id: 'a-panel',
  label: 'A panel',
  method: 'panel',
  kit: [],
  placement: usualPlacement,
  rules: usualRules,
  notes: '',
};

interface Asked {
  readonly legs?: readonly Partial<Leg>[];
  readonly leg?: number;
  readonly lying?: Lying;
  readonly by?: SunBy;
  readonly sky?: Partial<SkySettings>;
  readonly startDate?: string;
}

function ask({ legs = [{}], leg = 0, lying = { as: 'flat' }, by = 'day', sky = {}, startDate }: Asked) {
  const tour = tourFixture(
    legs.map((each) => legFixture(each)),
    startDate,
  );
  return legSun(tour, leg, lying, by, {
    stations: [stationFixture('Plain')],
    items: demoItems,
    scenarios: [scenario],
    settings: { ...demoSettings, stepMinutes: '30', sky: { ...usualSky, histories: 60, ...sky } },
  });
}

function sunOf(asked: Asked): LegSun {
  const outcome = ask(asked);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
}

const wh = (sun: LegSun): number[] => sun.panels[0]!.periods.map(({ mean }) => mean);

describe('legSun()', () => {
  it.each([
    { what: 'a leg that is not there', asked: { leg: 3 } },
    {
      what: 'a scenario that is not there',
      asked: { lying: { as: 'scenario', scenarioId: 'gone' } as const },
    },
    {
      what: 'a station that is not there',
      asked: { legs: [{ place: { as: 'station', station: 'Gone' } as const }] },
    },
  ])('says that it knows nothing of $what', ({ asked }) => {
    expect(ask(asked)).toMatchObject({ ok: false, error: { code: 'not-found' } });
  });

  it('has a period a day and a panel for each owned or considered', () => {
    const { periods, panels } = sunOf({});
    expect(periods.map(({ date }) => date)).toEqual([
      '2027-05-03',
      '2027-05-04',
      '2027-05-05',
      '2027-05-06',
      '2027-05-07',
      '2027-05-08',
      '2027-05-09',
    ]);
    const considered = demoItems.filter(({ kind, state }) => kind === 'panel' && state !== 'retired');
    expect(panels.map(({ itemId }) => itemId)).toEqual(considered.map(({ id }) => id));
    for (const panel of panels) expect(panel.periods).toHaveLength(7);
  });

  it('goes on where the leg before it ended, over new year and 29 February', () => {
    const { periods } = sunOf({ legs: [{ days: 60 }, { days: 3 }], leg: 1, startDate: '2027-12-30' });
    expect(periods.map(({ date }) => date)).toEqual(['2028-02-28', '2028-02-29', '2028-03-01']);
  });

  it('has the twelve months of the year when asked for months', () => {
    const sun = sunOf({ by: 'month' });
    expect(sun.periods.map(({ date }) => date.slice(5))).toContain('02-15');
    const months = wh(sun);
    expect(months).toHaveLength(12);
    expect(months.indexOf(Math.max(...months))).toBe(5);
    expect(months.indexOf(Math.min(...months))).toBe(11);
  });

  it('has every mean within its band of 80 in 100', () => {
    const { periods, panels } = sunOf({});
    for (const { mean, band } of [...periods.map((each) => each.radiationKWhM2), ...panels[0]!.periods]) {
      expect(band.p10).toBeLessThan(mean);
      expect(band.p90).toBeGreaterThan(mean);
    }
  });

  it('orders dull week, dull day, usual day and good day', () => {
    const { dullDayWh, dullWeekWh, usualDayWh, goodDayWh } = sunOf({ legs: [{ days: 21 }] }).panels[0]!;
    expect(dullDayWh).toBeLessThan(dullWeekWh);
    expect(dullWeekWh).toBeLessThan(usualDayWh);
    expect(usualDayWh).toBeLessThan(goodDayWh);
  });

  it('knows a dull week of a leg shorter than a week', () => {
    expect(sunOf({ legs: [{ days: 2 }] }).panels[0]!.dullWeekWh).toBeGreaterThan(0);
  });

  it('gives most aimed all day, less flat, least on the rack of a scenario', () => {
    const all = (lying: Lying): number => wh(sunOf({ lying })).reduce((sum, each) => sum + each, 0);
    expect(all({ as: 'aimed' })).toBeGreaterThan(all({ as: 'flat' }));
    expect(all({ as: 'flat' })).toBeGreaterThan(all({ as: 'scenario', scenarioId: 'a-panel' }));
  });

  it('says where its climate comes from', () => {
    const { station } = sunOf({ legs: [{ place: coordinates(46, 10, 900) }] });
    expect(station).toMatchObject({
      place: 'Plain',
      country: 'Inventia',
      higherM: -700,
      temperaturesFrom: null,
    });
    expectNear(station.km, 111, 1, 'distance, km');
    expect(station.source).toContain('sun=');
  });

  it.each([
    { latDeg: 85, startDate: '2027-12-01', as: 'down' },
    { latDeg: 90, startDate: '2027-06-01', as: 'up' },
    { latDeg: -90, startDate: '2027-06-01', as: 'down' },
  ])('answers at latitude $latDeg where the sun stays $as', ({ latDeg, startDate, as }) => {
    const sun = sunOf({ legs: [{ place: coordinates(latDeg, 0, 0) }], startDate, lying: { as: 'aimed' } });
    expect(sun.periods.map((period) => period.sun.as)).toEqual(new Array(7).fill(as));
    const figures = [...wh(sun), sun.panels[0]!.dullWeekWh, sun.periods[0]!.radiationKWhM2.mean];
    for (const figure of figures) expect(as === 'up' ? figure > 0 : figure === 0).toBe(true);
    expect(sun.aimedOverFlat === null).toBe(as === 'down');
  });

  it('gives the same answer on both sides of the date line', () => {
    const at = (lonDeg: number): number[] => wh(sunOf({ legs: [{ place: coordinates(45, lonDeg) }] }));
    expect(at(180)).toEqual(at(-180));
  });

  it('draws the same weather from the same seed and other weather from another', () => {
    expect(wh(sunOf({ sky: { seed: 5 } }))).toEqual(wh(sunOf({ sky: { seed: 5 } })));
    expect(wh(sunOf({ sky: { seed: 6 } }))).not.toEqual(wh(sunOf({ sky: { seed: 5 } })));
  });

  it('keeps the mean with either method of weather', () => {
    const mean = (sky: Partial<SkySettings>): number => {
      const { periods } = sunOf({ legs: [{ days: 28 }], sky: { histories: 200, ...sky } });
      return periods.reduce((sum, { radiationKWhM2 }) => sum + radiationKWhM2.mean, 0) / 28;
    };
    const expected = mean({ method: 'distribution' });
    // 5,600 correlated days: the standard error of their mean is about 0.6 % each.
    expectNear(mean({ method: 'transitions' }), expected, 0.025 * expected, 'kWh/m2 a day');
  });
});
