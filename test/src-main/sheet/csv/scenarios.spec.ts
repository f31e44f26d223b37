import { describe, expect, it } from 'vitest';
import type { Comparison } from '../../../../shared-types/comparison.ts';
import { scenarioTable } from '../../../../src-main/sheet/csv/scenarios.ts';
import { comparisonFixture, scenarioFixture } from '../../../support/comparison-fixture.ts';
import { expectNear } from '../../../support/near.ts';
import { scoredRow } from '../../../support/score-fixture.ts';
import { matterOf } from '../../../support/sheet-matter.ts';
import { recordsOf } from './records.ts';

function rowsOf(comparison: Partial<Comparison> = {}) {
  return recordsOf(scenarioTable(matterOf(comparison)));
}

describe('scenarioTable', () => {
  it('has no row when nothing was compared', () => {
    expect(rowsOf({ scenarios: [] })).toEqual([]);
  });

  it('leaves empty what does not exist', () => {
    const margin = { value: 3, capped: true, limitedBy: null, usual: 3, usualCapped: true };
    const { cost } = scenarioFixture('banks');
    const banks = scenarioFixture('banks', { margin, firstShort: null, cost: { ...cost, paidNights: null } });
    expect(rowsOf({ scenarios: [banks], scores: [] })).toMatchObject([
      {
        rank: null,
        score: null,
        margin_capped: 'yes',
        margin_limited_by: null,
        margin_limited_on_day: null,
        first_short_device: null,
        first_short_day: null,
        first_short_earliest_day: null,
        not_converted: '',
        hub_set_price: null,
        hub_set_g: null,
        nights_that_need_a_wall: null,
        left_out_because: null,
        dominated_by: null,
        second_opinion_rank: null,
        second_opinion_closeness: null,
      },
    ]);
  });

  it('says what a scenario is left out for, and what it is dominated by', () => {
    const [hub, banks] = [scenarioFixture('hub'), scenarioFixture('banks')];
    const excludedBy = [
      { limit: 'toBuy', text: 'costs 264 EUR' },
      { limit: 'grams', text: 'weighs 714 g' },
    ] as const;
    const scores = [
      scoredRow(banks.id, 0.8, { dominatedBy: hub.id }),
      scoredRow(hub.id, 0.4, { excludedBy, topsis: null }),
    ];
    expect(rowsOf({ scenarios: [banks, hub], scores })).toMatchObject([
      { dominated_by: 'Generator hub', left_out_because: '', second_opinion_rank: 1 },
      { dominated_by: null, left_out_because: 'costs 264 EUR; weighs 714 g', second_opinion_rank: null },
    ]);
  });

  it('gives one row a scenario in order of rank, scores found by scenario and not by place', () => {
    const rows = rowsOf({ scores: comparisonFixture().scores.toReversed() });
    expect(rows.map(({ method, rank, score }) => [method, rank, score])).toEqual([
      ['hub', 1, 0.74],
      ['banks', 2, 0.63],
      ['panel', 3, 0.52],
    ]);
  });

  it('writes money in major units, and names amounts that were not converted', () => {
    const { cost } = scenarioFixture('hub');
    const notConverted = [
      { minor: 12_000, currency: 'CHF' },
      { minor: 900, currency: 'JPY' },
    ];
    const toBuy = { minor: 123_456_789, currency: 'EUR' };
    const [row] = rowsOf({ scenarios: [scenarioFixture('hub', { cost: { ...cost, toBuy, notConverted } })] });
    expect(row).toMatchObject({
      to_buy: 1_234_567.89,
      currency: 'EUR',
      not_converted: '120\u00a0CHF; 900\u00a0JPY',
      per_tour_day: 0.35,
    });
  });

  it('says how sure the figures are', () => {
    const hub = scenarioFixture('hub', {
      risk: { share: 0.04, low: 0.0204, high: 0.0769 },
      firstShort: { device: 'Phone', day: 9, earliestDay: 6 },
      reserveWh: { p10: 12, p50: 41.25, p90: 58 },
      spilledShare: 0.125,
    });
    expect(rowsOf({ scenarios: [hub] })).toMatchObject([
      {
        seed: 1,
        margin_confidence: 0.9,
        energy_margin: 0.31,
        energy_margin_pct: 31,
        usual_margin: 0.44,
        usual_margin_capped: 'no',
        flat_share: 0.04,
        flat_share_low: 0.0204,
        flat_share_high: 0.0769,
        first_short_day: 9,
        first_short_earliest_day: 6,
        lowest_stored_wh: 41.25,
        lowest_stored_p10_wh: 12,
        lowest_stored_p90_wh: 58,
        spilled_share: 0.125,
      },
    ]);
  });

  it('repeats tour, date, histories and version in each row', () => {
    for (const row of rowsOf()) {
      expect(row).toMatchObject({
        tour: 'Coast and passes',
        start_date: '2027-05-03',
        days: 24,
        histories: 200,
        made_on: '2027-04-18',
        version: '0.1.0',
      });
    }
  });

  it('balances over the mean day to rounding', () => {
    for (const [index, row] of rowsOf().entries()) {
      const wh = (column: string) => Number(row[`${column}_wh_per_day`]);
      const { days } = comparisonFixture().scenarios[index]!;
      const storedWh = days.reduce((sum, day) => sum + day.stored, 0) / days.length;
      const out = wh('demand') - wh('unserved') + wh('lost') + wh('spilled') + storedWh;
      // Seven figures of three decimals, each off by at most half a thousandth.
      expectNear(wh('wall') + wh('panel') + wh('hub'), out, 7 * 0.0005, 'mean income, Wh');
    }
  });

  it('keeps the columns its readers rely on, in order', () => {
    expect(scenarioTable(matterOf({})).columns).toEqual([
      ...['scenario', 'method', 'rank', 'score', 'to_buy', 'whole_price', 'currency', 'not_converted'],
      ...['carried_g', 'front_wheel_g', 'energy_margin', 'energy_margin_pct', 'margin_capped'],
      ...[
        'margin_limited_by',
        'margin_limited_on_day',
        'first_short_device',
        'first_short_day',
        'flat_share',
      ],
      ...['lowest_stored_wh', 'demand_wh_per_day', 'wall_wh_per_day', 'panel_wh_per_day', 'hub_wh_per_day'],
      ...['lost_wh_per_day', 'spilled_wh_per_day', 'unserved_wh_per_day', 'tour', 'start_date', 'days'],
      ...['histories', 'made_on', 'version', 'later_min_per_day_grams', 'later_min_per_day_hub'],
      ...['later_min_per_day_hub_off', 'hub_set_price', 'hub_set_g', 'seed', 'margin_confidence'],
      ...['usual_margin', 'usual_margin_capped', 'flat_share_low', 'flat_share_high'],
      ...['first_short_earliest_day', 'lowest_stored_p10_wh', 'lowest_stored_p90_wh', 'spilled_share'],
      ...['wheel_building', 'per_tour_day', 'resale', 'per_tour_day_not_converted'],
      ...['nights_that_need_a_wall', 'minutes_lost_per_day', 'days_without_wall', 'left_out_because'],
      ...['dominated_by', 'second_opinion_rank', 'second_opinion_closeness', 'by_air'],
    ]);
  });
});
