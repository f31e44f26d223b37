import { describe, expect, it } from 'vitest';
import { airTable, kitTable, lightTable } from '../../../../src-main/sheet/csv/kit.ts';
import { airFixture } from '../../../support/air-fixture.ts';
import { scenarioFixture } from '../../../support/comparison-fixture.ts';
import { matterOf } from '../../../support/sheet-matter.ts';
import { stopRulesFixture } from '../../../support/stop-rules-fixture.ts';
import { recordsOf } from './records.ts';

const bank = { bank: 'Large bank', fullWh: 60 };

describe('kitTable', () => {
  it('leaves owner and price empty of what has no price known', () => {
    const { cost } = scenarioFixture('panel');
    const panel = scenarioFixture('panel', { cost: { ...cost, lines: [] } });
    expect(recordsOf(kitTable(matterOf({ scenarios: [panel] })))[0]).toMatchObject({
      owned: null,
      whole_price: null,
      currency: null,
    });
  });

  it('has a row for each scenario and item, of all its pieces', () => {
    const rows = recordsOf(kitTable(matterOf({ scenarios: [scenarioFixture('panel')] })));
    expect(rows).toHaveLength(4);
    expect(rows[0]).toEqual({
      scenario: 'Panel and buffer bank',
      item: '20 W folding panel',
      kind: 'panel',
      quantity: 1,
      mount: 'rear-rack',
      net_g: 540,
      front_wheel_g: 0,
      owned: 'no',
      whole_price: 99,
      currency: 'EUR',
    });
    expect(rows[3]).toMatchObject({ item: 'Short charging cable', quantity: 2, net_g: 44, owned: 'yes' });
  });
});

describe('lightTable', () => {
  it('leaves the days empty where the must-haves use nothing', () => {
    const stopRules = stopRulesFixture({ leg: 'Passes', mustHaveWhPerDay: 0, banks: [bank], sourcesWh: 0 });
    const rows = recordsOf(lightTable(matterOf({ scenarios: [scenarioFixture('banks', { stopRules })] })));
    expect(rows[0]).toMatchObject({ low_days: null, high_days: null, panel_and_hub_carry_it: 'no' });
  });

  it('has a row for each number of lights, alone and with panel and hub', () => {
    // By hand: a light of four is 15 Wh; 30 Wh a day alone, 15 Wh a day with what the panel gives.
    const stopRules = stopRulesFixture({ leg: 'Passes', mustHaveWhPerDay: 30, banks: [bank], sourcesWh: 15 });
    const rows = recordsOf(lightTable(matterOf({ scenarios: [scenarioFixture('panel', { stopRules })] })));
    expect(rows).toHaveLength(4);
    expect(rows[0]).toEqual({
      scenario: 'Panel and buffer bank',
      bank: 'Large bank',
      pieces: 1,
      full_wh: 60,
      lit: 4,
      lights: 4,
      low_wh: 45,
      high_wh: 60,
      low_days: 1.5,
      high_days: 2,
      low_days_with_panel_and_hub: 3,
      high_days_with_panel_and_hub: 4,
      panel_and_hub_carry_it: 'no',
      must_have_wh_per_day: 30,
      leg: 'Passes',
    });
  });

  it('says where panel and hub carry the must-haves by themselves', () => {
    const stopRules = stopRulesFixture({ leg: 'Passes', mustHaveWhPerDay: 30, banks: [bank], sourcesWh: 31 });
    const rows = recordsOf(lightTable(matterOf({ scenarios: [scenarioFixture('hub', { stopRules })] })));
    expect(rows[0]).toMatchObject({ low_days_with_panel_and_hub: null, panel_and_hub_carry_it: 'yes' });
  });
});

describe('airTable', () => {
  it('has a row for each battery, and the scenario’s verdict in each', () => {
    const air = airFixture({ verdict: { class: 'stays-home', text: 'One bank too many.' } });
    const rows = recordsOf(airTable(matterOf({ scenarios: [scenarioFixture('banks', { air })] })));
    expect(rows).toEqual([
      {
        scenario: 'Two banks',
        battery: '20 Ah bank, 18 W in',
        kind: 'power-bank',
        count: 1,
        label_wh: 74,
        class: 'within',
        to_do: 'Cabin only.',
        scenario_verdict: 'One bank too many.',
      },
      expect.objectContaining({ battery: 'Phone', label_wh: 17.325, scenario_verdict: 'One bank too many.' }),
    ]);
  });
});
