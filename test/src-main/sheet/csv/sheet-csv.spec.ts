import papaparse from 'papaparse';
import { describe, expect, it } from 'vitest';
import type { ScenarioResult } from '../../../../shared-types/comparison.ts';
import { sheetTable, type SheetTable } from '../../../../shared-types/sheet.ts';
import { sheetCsv } from '../../../../src-main/sheet/csv/sheet-csv.ts';
import type { SheetMatter } from '../../../../src-main/sheet/matter.ts';
import { comparisonFixture, scenarioFixture } from '../../../support/comparison-fixture.ts';
import { matterFixture } from '../../../support/sheet-matter.ts';
import { swingFixture, swingsFixture } from '../../../support/swings-fixture.ts';

const tables: readonly SheetTable[] = sheetTable.options;
const formula = '=HYPERLINK("a","b")';

/** Every text of a rider begins like a formula. */
function harmful(): SheetMatter {
  const plain = comparisonFixture();
  const scenarios = plain.scenarios.map((scenario) => harmfulScenario(scenario));
  const shown = { id: plain.scenarios[0]!.id, label: formula, method: 'hub' } as const;
  const leaderId = shown.id;
  return matterFixture({
    comparison: {
      ...plain,
      scenarios,
      tour: { ...plain.tour, label: formula },
      scores: plain.scores.map((score) => ({
        ...score,
        dominatedBy: leaderId,
        excludedBy: [{ limit: 'toBuy', text: formula }],
      })),
      assumptions: [{ name: formula, value: formula, basis: 'rider', source: formula }],
    },
    swings: swingsFixture({
      scenarios: [shown],
      firstId: leaderId,
      secondId: leaderId,
      swings: [
        swingFixture({
          name: formula,
          source: formula,
          low: { value: 0, leadPoints: -1, leaderId },
          high: { value: 1, leadPoints: 1, leaderId },
        }),
      ],
    }),
  });
}

function harmfulScenario(scenario: ScenarioResult): ScenarioResult {
  const { margin, stopRules, air, mass, legs } = scenario;
  return {
    ...scenario,
    label: formula,
    margin: { ...margin, limitedBy: { device: formula, day: 3 } },
    firstShort: { device: formula, day: 3, earliestDay: 2 },
    mass: { ...mass, lines: mass.lines.map((line) => ({ ...line, label: formula })) },
    legs: legs.map((leg) => ({ ...leg, leg: formula, station: formula })),
    stopRules: {
      ...stopRules,
      leg: formula,
      banks: stopRules.banks.map((bank) => ({ ...bank, bank: formula })),
    },
    air: {
      ...air,
      lines: air.lines.map((line) => ({ ...line, label: formula, toDo: formula })),
      verdict: { ...air.verdict, text: formula },
    },
    assumptions: [{ name: formula, value: formula, basis: 'rider', source: formula }],
  };
}

function readBack(matter: SheetMatter, table: SheetTable): readonly Record<string, string>[] {
  const { data, errors } = papaparse.parse<Record<string, string>>(sheetCsv(matter, table), {
    header: true,
    skipEmptyLines: true,
  });
  expect(errors).toEqual([]);
  return data;
}

describe('sheetCsv', () => {
  it.each(tables)('lets nothing of the rider run as a formula: %s', (table) => {
    const cells = readBack(harmful(), table).flatMap((row) => Object.values(row));
    expect(cells).toContain(`'${formula}`);
    // A number may be below 0; no other cell may begin so.
    const running = cells.filter((cell) => /^\s*[=+\-@]/u.test(cell) && !Number.isFinite(Number(cell)));
    expect(running).toEqual([]);
  });

  it.each(tables)('is a head alone of nothing: %s', (table) => {
    const none = comparisonFixture({ scenarios: [], scores: [], assumptions: [] });
    const csv = sheetCsv(matterFixture({ comparison: none, swings: { why: 'Nothing.' } }), table);
    expect(csv.match(/\r\n/gu)).toHaveLength(1);
    expect(csv).toMatch(/^\ufeff[a-z0-9_,]+\r\n$/u);
  });

  it.each(tables)('writes what is not known as an empty cell: %s', (table) => {
    const [hub] = comparisonFixture().scenarios;
    const values = { ...hub!.values, minutesLost: Number.NaN, daysWithoutWall: Number.NaN };
    const legs = hub!.legs.map((leg) => ({ ...leg, speedKmh: Number.NaN, stationKm: Infinity }));
    const scenarios = [scenarioFixture('hub', { values, legs, spilledShare: Number.NaN })];
    const csv = sheetCsv(matterFixture({ comparison: comparisonFixture({ scenarios }) }), table);
    expect(csv).not.toMatch(/NaN|Infinity|undefined|null|\[object/u);
  });

  it.each<[SheetTable, readonly string[]]>([
    [
      'kit',
      [
        ...['scenario', 'item', 'kind', 'quantity', 'mount', 'net_g', 'front_wheel_g', 'owned'],
        ...['whole_price', 'currency'],
      ],
    ],
    [
      'lights',
      [
        ...[
          'scenario',
          'bank',
          'pieces',
          'full_wh',
          'lit',
          'lights',
          'low_wh',
          'high_wh',
          'low_days',
          'high_days',
        ],
        ...['low_days_with_panel_and_hub', 'high_days_with_panel_and_hub', 'panel_and_hub_carry_it'],
        ...['must_have_wh_per_day', 'leg'],
      ],
    ],
    ['air', ['scenario', 'battery', 'kind', 'count', 'label_wh', 'class', 'to_do', 'scenario_verdict']],
    [
      'swings',
      [
        ...['assumption', 'scale', 'low', 'planned', 'high', 'lead_of', 'lead_over', 'lead_points_planned'],
        ...['lead_points_low', 'lead_points_high', 'first_at_low', 'first_at_high', 'changes_sign'],
        ...['flip_below', 'flip_above', 'flips', 'source'],
      ],
    ],
    ['assumptions', ['assumption', 'value', 'basis', 'source', 'used_by']],
  ])('keeps the columns that readers of %s rely on, in order', (table, columns) => {
    const [head] = sheetCsv(matterFixture(), table).split('\r\n');
    expect(head).toBe(`\ufeff${columns.join(',')}`);
  });

  it('says the same for the same matter', () => {
    for (const table of tables)
      expect(sheetCsv(matterFixture(), table)).toBe(sheetCsv(matterFixture(), table));
  });
});
