import { describe, expect, it } from 'vitest';
import type { Comparison, DayLedger, LegYield } from '../../../../shared-types/comparison.ts';
import type { Table } from '../../../../src-main/sheet/content/content.ts';
import { energySection, storedSection } from '../../../../src-main/sheet/content/energy.ts';
import { comparisonFixture, scenarioFixture } from '../../../support/comparison-fixture.ts';
import { paragraphsOf, rowTexts, tableOf } from '../../../support/sheet-section.ts';

const [aLeg] = scenarioFixture('hub').legs;
const [aDay] = scenarioFixture('hub').days;

/** Legs of one day each, with the risks given, in shares of 1. */
function legsAtRisk(shares: readonly number[]): readonly LegYield[] {
  return shares.map((share, at) => ({
    ...aLeg!,
    leg: `Leg ${at + 1}`,
    days: 1,
    risk: { share, low: share, high: share },
  }));
}

function dayOf(flows: Partial<DayLedger>): DayLedger {
  const none = { demand: 0, wall: 0, panel: 0, hub: 0, lost: 0, spilled: 0, unserved: 0 };
  return { ...aDay!, ...none, ...flows };
}

function energy(comparison: Partial<Comparison>): Table {
  return tableOf(energySection(comparisonFixture(comparison)));
}

/** The first cells of each row: of which leg it is. */
function namesIn(table: Table): readonly string[] {
  return rowTexts(table).map(([name]) => name!);
}

describe('energySection', () => {
  it('has no row when nothing was compared', () => {
    expect(energy({ scenarios: [] }).rows).toEqual([]);
  });

  it('shows zeros for a tour without days', () => {
    const [whole] = rowTexts(energy({ scenarios: [scenarioFixture('hub', { days: [], legs: [] })] }));
    expect(whole!.slice(1, 10)).toEqual(['0', '', ...Array<string>(7).fill('0.0')]);
  });

  it('leads each scenario’s legs by a row of the whole tour', () => {
    const { rows } = energy({});
    expect(rows.map(({ heads, cells }) => [heads, cells[0]!.text, cells[1]!.text])).toEqual([
      ...[
        [true, 'Generator hub', '24'],
        [false, 'Coast', '14'],
        [false, 'Passes', '10'],
      ],
      ...[
        [true, 'Two banks', '24'],
        [false, 'Coast', '14'],
        [false, 'Passes', '10'],
      ],
      ...[
        [true, 'Panel and buffer bank', '24'],
        [false, 'Coast', '14'],
        [false, 'Passes', '10'],
      ],
    ]);
  });

  it('gives the mean day of the tour and of each leg, one decimal', () => {
    const days = [
      dayOf({ demand: 30, wall: 60, lost: 6 }),
      dayOf({ demand: 31, hub: 10, spilled: 4 }),
      dayOf({ demand: 35, hub: 20.04, panel: 3, unserved: 1234.5 }),
    ];
    const legs = legsAtRisk([0, 0]).map((leg, at) => ({ ...leg, days: [2, 1][at]! }));
    const table = energy({ scenarios: [scenarioFixture('hub', { days, legs })] });
    // By hand: thirds for the tour, halves for the leg of two days.
    expect(rowTexts(table).map((texts) => texts.slice(3, 10))).toEqual([
      ['32.0', '20.0', '1.0', '10.0', '2.0', '1.3', '411.5'],
      ['30.5', '30.0', '0.0', '5.0', '3.0', '2.0', '0.0'],
      ['35.0', '0.0', '3.0', '20.0', '0.0', '0.0', '1,234.5'],
    ]);
    expect(table.columns.slice(3, 10).map(({ head }) => head)).toEqual([
      ...['Use', 'Wall', 'Panel', 'Hub', 'Lost', 'Spilled', 'Unserved'],
    ]);
  });

  it('says how often a must-have is flat on the tour and on each leg', () => {
    const table = energy({ scenarios: [scenarioFixture('panel')] });
    expect(rowTexts(table).map((texts) => texts.at(-1))).toEqual([
      '58 of 100 (51 to 65)',
      '11 of 100 (7 to 16)',
      '58 of 100 (51 to 65)',
    ]);
  });

  it('shows the legs at most risk where there are many, in the order of the tour', () => {
    const shares = Array.from({ length: 30 }, (_, at) => ([3, 12, 25].includes(at) ? 0.5 - at / 100 : 0.01));
    const scenarios = Array.from({ length: 5 }, (_, at) =>
      scenarioFixture('banks', { id: `banks-${at}`, label: `Banks ${at}`, legs: legsAtRisk(shares) }),
    );
    const section = energySection(comparisonFixture({ scenarios }));
    // Twenty rows for five scenarios: a row of the tour and three of legs each.
    expect(namesIn(tableOf(section)).slice(0, 5)).toEqual([
      'Banks 0',
      'Leg 4',
      'Leg 13',
      'Leg 26',
      'Banks 1',
    ]);
    expect(tableOf(section).rows).toHaveLength(20);
    expect(paragraphsOf(section).join(' ')).toContain('Of 30 legs the 3 at most risk are shown.');
  });

  it('takes of legs at equal risk those that leave most use unserved', () => {
    const days = [0, 2, 0, 9, 0, 5].map((unserved) => dayOf({ unserved }));
    const legs = legsAtRisk(Array<number>(6).fill(0.2));
    const scenarios = Array.from({ length: 6 }, (_, at) =>
      scenarioFixture('banks', { id: `banks-${at}`, label: 'Banks', legs, days }),
    );
    // Twenty rows for six scenarios: two legs each.
    expect(namesIn(energy({ scenarios })).slice(0, 3)).toEqual(['Banks', 'Leg 4', 'Leg 6']);
  });

  it('says nothing of legs left out where none is', () => {
    expect(paragraphsOf(energySection(comparisonFixture())).join()).not.toContain('at most risk');
  });
});

describe('storedSection', () => {
  it('says so when there is nothing to draw', () => {
    const [figure] = storedSection(comparisonFixture({ scenarios: [] })).blocks;
    expect(figure).toMatchObject({ as: 'figure', finding: 'No scenario to show.', drawings: [] });
  });

  it('draws each scenario to the scale of the one that stores most', () => {
    const [figure] = storedSection(comparisonFixture()).blocks;
    if (figure?.as !== 'figure') throw new Error('stored energy must be drawn');
    expect(figure.drawings).toHaveLength(3);
    // The two banks hold 183 Wh in the fixture.
    expect(figure.subtitle).toContain('0 to 183\u00a0Wh');
    for (const { svg } of figure.drawings) expect(svg(160)).toContain('>183<');
  });

  it('names what runs flat with the first, or what it keeps', () => {
    const finding = (method: 'panel' | 'hub'): unknown => {
      const reserveWh = { p10: 12, p50: 41, p90: 58 };
      const scenarios = [scenarioFixture(method, { reserveWh })];
      return storedSection(comparisonFixture({ scenarios })).blocks[0];
    };
    expect(finding('panel')).toMatchObject({
      finding:
        'With Panel and buffer bank a must-have runs flat in 58 of 100 histories (51 to 65), the phone first, on day 9; at the earliest day 6.',
    });
    expect(finding('hub')).toMatchObject({
      finding: 'Generator hub keeps 12\u00a0Wh or more in store in 90 of 100 histories.',
    });
  });
});
