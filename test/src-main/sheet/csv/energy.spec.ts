import { describe, expect, it } from 'vitest';
import { dayTable, legTable } from '../../../../src-main/sheet/csv/energy.ts';
import { scenarioFixture } from '../../../support/comparison-fixture.ts';
import { matterOf } from '../../../support/sheet-matter.ts';
import { recordsOf } from './records.ts';

const flows = ['demand', 'wall', 'panel', 'hub', 'lost', 'spilled', 'unserved'] as const;

describe('legTable', () => {
  it('has a row for each scenario and leg, of its mean day', () => {
    const [day] = scenarioFixture('hub').days;
    const days = [10, 20, 90].map((hub) => ({ ...day!, hub }));
    const legs = scenarioFixture('hub').legs.map((leg, at) => ({ ...leg, days: [2, 1][at]! }));
    const rows = recordsOf(legTable(matterOf({ scenarios: [scenarioFixture('hub', { days, legs })] })));
    // By hand: the mean of 10 and 20 Wh, then 90 Wh.
    expect(rows).toMatchObject([
      { scenario: 'Generator hub', leg_number: 1, leg: 'Coast', days: 2, hub_wh_per_day: 15, flat_share: 0 },
      {
        scenario: 'Generator hub',
        leg_number: 2,
        leg: 'Passes',
        days: 1,
        hub_wh_per_day: 90,
        speed_kmh: 18.2,
      },
    ]);
  });

  it('says how often a must-have is flat, with its interval', () => {
    const [coast] = recordsOf(legTable(matterOf({ scenarios: [scenarioFixture('panel')] })));
    expect(coast).toMatchObject({ flat_share: 0.11, flat_share_low: 0.0738, flat_share_high: 0.1609 });
  });

  it('keeps the columns its readers rely on, in order', () => {
    expect(legTable(matterOf({})).columns).toEqual([
      ...['scenario', 'leg_number', 'leg', 'days'],
      ...flows.map((flow) => `${flow}_wh_per_day`),
      ...['flat_share', 'flat_share_low', 'flat_share_high', 'nights_with_an_outlet', 'climate_station'],
      ...['station_km', 'station_higher_m', 'radiation_kwh_per_m2_day', 'daylight_h', 'speed_kmh'],
      ...['later_min_per_day_grams', 'later_min_per_day_hub', 'later_min_per_day_hub_off'],
    ]);
  });
});

describe('dayTable', () => {
  it('has a row for each scenario and day, and balances', () => {
    const scenarios = [scenarioFixture('hub'), scenarioFixture('panel')];
    const rows = recordsOf(dayTable(matterOf({ scenarios })));
    expect(rows).toHaveLength(48);
    expect(rows[23]).toMatchObject({ scenario: 'Generator hub', day: 24, date: '2027-05-26' });
    for (const row of rows) {
      const wh = (column: string) => Number(row[`${column}_wh`]);
      const used = wh('demand') - wh('unserved');
      const out = used + wh('lost') + wh('spilled') + wh('stored_change');
      // Eight figures of three decimals, each off by at most half a thousandth.
      expect(Math.abs(wh('wall') + wh('panel') + wh('hub') - out)).toBeLessThanOrEqual(8 * 0.0005);
    }
  });

  it('keeps the columns its readers rely on, in order', () => {
    expect(dayTable(matterOf({})).columns).toEqual([
      ...['scenario', 'day', 'date'],
      ...flows.map((flow) => `${flow}_wh`),
      ...['wall_to_banks_wh', 'stored_change_wh'],
    ]);
  });
});
