import fc from 'fast-check';
import papaparse from 'papaparse';
import { describe, expect, it } from 'vitest';
import type { Comparison } from '../../../shared-types/comparison.ts';
import { comparisonCsv } from '../../../src-main/sheet/csv.ts';
import { comparisonFixture, scenarioFixture } from '../../support/comparison-fixture.ts';
import { expectNear } from '../../support/near.ts';

const stamp = { madeOn: '2027-04-18', version: '0.1.0' };
const byteOrderMark = '\ufeff';

/** Reads the sheet back with all cells as text, by the column names of its first line. */
function readBack(comparison: Comparison): Record<string, string>[] {
  const { data, errors } = papaparse.parse<Record<string, string>>(comparisonCsv(comparison, stamp), {
    header: true,
    skipEmptyLines: true,
  });
  expect(errors).toEqual([]);
  return data;
}

function rowOf(comparison: Comparison): Record<string, string> {
  const [row] = readBack(comparison);
  if (row === undefined) throw new Error('the sheet has no row');
  return row;
}

function labelled(label: string): Comparison {
  return comparisonFixture({ scenarios: [scenarioFixture('panel', { label })] });
}

describe('a label in the CSV sheet that could do harm', () => {
  it.each([
    '=1+1',
    '+1',
    '-1',
    '@SUM(A1)',
    '\t=1',
    '\r=1',
    '\n=1',
    ' =1',
    '=1\n2',
    '＝1',
    '＋1',
    '－1',
    '＠1',
  ])('defuses a cell that begins like a formula: %j', (label) => {
    expect(rowOf(labelled(label))['scenario']).toBe(`'${label}`);
  });

  it('defuses device and tour labels too', () => {
    const limitedBy = { device: '=cmd', day: 3 };
    const panel = scenarioFixture('panel', {
      margin: { value: -0.18, capped: false, limitedBy, usual: -0.04, usualCapped: false },
      firstShort: { ...limitedBy, earliestDay: 2 },
    });
    const { tour } = comparisonFixture();
    const row = rowOf(comparisonFixture({ scenarios: [panel], tour: { ...tour, label: '@tour' } }));
    expect(row['margin_limited_by']).toBe("'=cmd");
    expect(row['first_short_device']).toBe("'=cmd");
    expect(row['tour']).toBe("'@tour");
  });

  it('leaves signs inside a label alone', () => {
    expect(rowOf(labelled('Hub + panel = mix'))['scenario']).toBe('Hub + panel = mix');
  });

  it('leaves a true negative number a number', () => {
    const row = rowOf(labelled('Panel'));
    expect(row['energy_margin']).toBe('-0.18');
    expect(row['energy_margin_pct']).toBe('-18');
  });

  it('carries any other label through unchanged', () => {
    const label = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 80 });
    fc.assert(
      fc.property(label, (text) => {
        const got = rowOf(labelled(text))['scenario'];
        expect(got === text || got === `'${text}`).toBe(true);
      }),
    );
  });
});

describe('the CSV sheet as a file', () => {
  it('begins with one UTF-8 byte order mark', () => {
    const bytes = new TextEncoder().encode(comparisonCsv(comparisonFixture(), stamp));
    // EF BB BF is U+FEFF in UTF-8 (RFC 3629, section 6).
    expect([...bytes.slice(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    expect(comparisonCsv(comparisonFixture(), stamp).lastIndexOf(byteOrderMark)).toBe(0);
  });

  it('ends every line with CRLF as RFC 4180 asks', () => {
    const csv = comparisonCsv(comparisonFixture(), stamp);
    expect(csv.endsWith('\r\n')).toBe(true);
    expect(csv.split('\r\n')).toHaveLength(5);
    expect(csv.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/u);
  });

  it('quotes commas, quotation marks and line breaks', () => {
    const label = 'Panel, 20 W "folding"\nand bank';
    expect(comparisonCsv(labelled(label), stamp)).toContain('"Panel, 20 W ""folding""\nand bank"');
    expect(rowOf(labelled(label))['scenario']).toBe(label);
  });

  it('has the columns its readers rely on, in order', () => {
    expect(Object.keys(rowOf(comparisonFixture()))).toEqual([
      'scenario',
      'method',
      'rank',
      'score',
      'to_buy',
      'whole_price',
      'currency',
      'not_converted',
      'carried_g',
      'front_wheel_g',
      'energy_margin',
      'energy_margin_pct',
      'margin_capped',
      'margin_limited_by',
      'margin_limited_on_day',
      'first_short_device',
      'first_short_day',
      'flat_share',
      'lowest_stored_wh',
      'demand_wh_per_day',
      'wall_wh_per_day',
      'panel_wh_per_day',
      'hub_wh_per_day',
      'lost_wh_per_day',
      'spilled_wh_per_day',
      'unserved_wh_per_day',
      'tour',
      'start_date',
      'days',
      'histories',
      'made_on',
      'version',
      'later_min_per_day_grams',
      'later_min_per_day_hub',
      'later_min_per_day_hub_off',
      'hub_set_price',
      'hub_set_g',
      'seed',
      'margin_confidence',
      'usual_margin',
      'usual_margin_capped',
      'flat_share_low',
      'flat_share_high',
      'first_short_earliest_day',
      'lowest_stored_p10_wh',
      'lowest_stored_p90_wh',
      'spilled_share',
    ]);
  });

  it('says the same for the same comparison', () => {
    expect(comparisonCsv(comparisonFixture(), stamp)).toBe(comparisonCsv(comparisonFixture(), stamp));
  });
});

describe('the figures of the CSV sheet', () => {
  it('are a head alone when nothing was compared', () => {
    expect(readBack(comparisonFixture({ scenarios: [] }))).toEqual([]);
  });

  it('leave blank what does not exist', () => {
    const margin = { value: 3, capped: true, limitedBy: null, usual: 3, usualCapped: true };
    const hub = scenarioFixture('hub', { margin, firstShort: null });
    const row = rowOf(comparisonFixture({ scenarios: [hub], scores: [] }));
    expect(row).toMatchObject({
      rank: '',
      score: '',
      margin_capped: 'yes',
      margin_limited_by: '',
      margin_limited_on_day: '',
      first_short_device: '',
      first_short_day: '',
      first_short_earliest_day: '',
      not_converted: '',
    });
  });

  it('give one row per scenario in rank order', () => {
    const rows = readBack(comparisonFixture());
    expect(rows.map(({ method }) => method)).toEqual(['hub', 'banks', 'panel']);
    expect(rows.map(({ rank }) => rank)).toEqual(['1', '2', '3']);
    expect(rows.map(({ score }) => score)).toEqual(['0.74', '0.63', '0.52']);
  });

  it('match scores by scenario, not by place', () => {
    const { scores } = comparisonFixture();
    const rows = readBack(comparisonFixture({ scores: scores.toReversed() }));
    expect(rows.map(({ rank }) => rank)).toEqual(['1', '2', '3']);
  });

  it('write money in major units without separators', () => {
    const { cost } = scenarioFixture('hub');
    const toBuy = { minor: 123_456_789, currency: 'EUR' };
    const row = rowOf(
      comparisonFixture({ scenarios: [scenarioFixture('hub', { cost: { ...cost, toBuy } })] }),
    );
    expect(row['to_buy']).toBe('1234567.89');
    expect(row['currency']).toBe('EUR');
  });

  it('name amounts that could not be converted', () => {
    const { cost } = scenarioFixture('hub');
    const notConverted = [
      { minor: 12_000, currency: 'CHF' },
      { minor: 900, currency: 'JPY' },
    ];
    const hub = scenarioFixture('hub', { cost: { ...cost, notConverted } });
    expect(rowOf(comparisonFixture({ scenarios: [hub] }))['not_converted']).toBe(
      '120\u00a0CHF; 900\u00a0JPY',
    );
  });

  it('never write an exponent or a thousands separator', () => {
    const tiny = scenarioFixture('panel', {
      reserveWh: { p10: 1e-12, p50: 1e-12, p90: 1e-12 },
      risk: { share: 1e-9, low: 0, high: 1e-9 },
    });
    const row = rowOf(comparisonFixture({ scenarios: [tiny] }));
    expect(row['lowest_stored_wh']).toBe('0');
    expect(row['flat_share']).toBe('0');
    expect(row['carried_g']).toBe('1031');
  });

  it('say how sure they are', () => {
    const hub = scenarioFixture('hub', {
      risk: { share: 0.04, low: 0.0204, high: 0.0769 },
      firstShort: { device: 'Phone', day: 9, earliestDay: 6 },
      reserveWh: { p10: 12, p50: 41.25, p90: 58 },
      spilledShare: 0.125,
    });
    expect(rowOf(comparisonFixture({ scenarios: [hub] }))).toMatchObject({
      seed: '1',
      margin_confidence: '0.9',
      usual_margin: '0.44',
      usual_margin_capped: 'no',
      flat_share: '0.04',
      flat_share_low: '0.0204',
      flat_share_high: '0.0769',
      first_short_day: '9',
      first_short_earliest_day: '6',
      lowest_stored_wh: '41.25',
      lowest_stored_p10_wh: '12',
      lowest_stored_p90_wh: '58',
      spilled_share: '0.125',
    });
  });

  it('repeat tour, date, histories and version in each row', () => {
    for (const row of readBack(comparisonFixture({ histories: 200 }))) {
      expect(row).toMatchObject({
        tour: 'Coast and passes',
        start_date: '2027-05-03',
        days: '24',
        histories: '200',
        made_on: '2027-04-18',
        version: '0.1.0',
      });
    }
  });

  it('balance over the mean day to rounding', () => {
    for (const [index, row] of readBack(comparisonFixture()).entries()) {
      const wh = (column: string) => Number(row[`${column}_wh_per_day`]);
      const { days } = comparisonFixture().scenarios[index]!;
      const storedWh = days.reduce((sum, day) => sum + day.stored, 0) / days.length;
      const used = wh('demand') - wh('unserved');
      const out = used + wh('lost') + wh('spilled') + storedWh;
      // Seven figures of three decimals, each off by at most half a thousandth.
      expectNear(wh('wall') + wh('panel') + wh('hub'), out, 7 * 0.0005, 'mean income, Wh');
    }
  });
});
