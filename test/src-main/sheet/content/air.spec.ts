import { describe, expect, it } from 'vitest';
import type { AirCheck, CheckedAirLine } from '../../../../shared-types/air-check.ts';
import { airSection } from '../../../../src-main/sheet/content/air.ts';
import { airFixture } from '../../../support/air-fixture.ts';
import { comparisonFixture, scenarioFixture } from '../../../support/comparison-fixture.ts';
import { cellsOf, listsOf, paragraphsOf, rowTexts, tableOf } from '../../../support/sheet-section.ts';

const [bank, phone] = airFixture().lines as [CheckedAirLine, CheckedAirLine];

function air(...checks: readonly Partial<AirCheck>[]) {
  const scenarios = checks.map((check, at) =>
    scenarioFixture('banks', { id: `scenario-${at}`, label: `Kit ${at}`, air: airFixture(check) }),
  );
  return airSection(comparisonFixture({ scenarios }));
}

describe('airSection', () => {
  it('is empty when nothing was compared', () => {
    expect(air().blocks).toEqual([]);
  });

  it('marks a verdict by which something stays home, and no milder one', () => {
    const fails = (verdict: AirCheck['verdict']['class']): unknown =>
      cellsOf(tableOf(air({ verdict: { class: verdict, text: 'The verdict.' } })), 0)[2]!.fails;
    expect(fails('stays-home')).toBe(true);
    expect(fails('approval')).toBe(false);
    expect(fails('within')).toBe(false);
  });

  it('says so where there is no bank and no battery', () => {
    expect(rowTexts(tableOf(air({ lines: [] }))).map((texts) => texts[1])).toEqual([
      'no power bank',
      'no battery',
    ]);
  });

  it('gives scenarios that carry the same banks one row, and others their own', () => {
    const two = { lines: [{ ...bank, count: 2 }, phone] };
    const table = tableOf(air({}, two, {}));
    expect(table.rows.map(({ cells: [label] }) => [label!.text, ...(label!.under ?? [])])).toEqual([
      ['Kit 0', 'Kit 2'],
      ['Kit 1'],
      ['Devices, in every scenario'],
    ]);
    expect(rowTexts(table)[1]![1]).toBe('2 × 20 Ah bank, 18 W in: 74\u00a0Wh each');
    // A row of two scenarios has the colour of neither.
    expect(table.rows.map(({ method }) => method)).toEqual([null, 'banks', null]);
  });

  it('keeps the same banks apart where the verdicts differ', () => {
    const verdict = { class: 'approval', text: 'Ask the airline.' } as const;
    expect(tableOf(air({}, { verdict })).rows).toHaveLength(3);
  });

  it('says what is carried by its label, what must be done, and whom to ask', () => {
    const section = air({});
    expect(rowTexts(tableOf(section))).toEqual([
      ['Kit 0', '20 Ah bank, 18 W in: 74\u00a0Wh', 'Nothing here is over the limits listed.'],
      // Watt-hours near a limit must not read as the limit itself: two decimals.
      ['Devices, in every scenario', expect.stringMatching(/^Phone: 17\.3[23]\u00a0Wh$/u), ''],
    ]);
    expect(cellsOf(tableOf(section), 0)[2]!.under).toEqual(['Cabin only.']);
    expect(cellsOf(tableOf(section), 1)[2]!.under).toEqual(['Best in the cabin.']);
    expect(paragraphsOf(section)).toEqual([
      'Rules change, and airlines and states may be stricter: ask them.',
    ]);
  });

  it('names each rule with its date, where one is known, and its source', () => {
    expect(listsOf(air({}))[0]!.items).toEqual([
      'At most two power banks a person. (since 27 March 2026; an invented rule book)',
      'Up to 100 Wh without approval. (an invented rule book)',
    ]);
  });
});
